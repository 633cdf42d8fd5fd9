package report

// The names of the fields below are told in JSON.md and stay. A field that can be empty is
// there all the same, so that a reader need not ask; "place" alone is left out where there
// is none. Lists are in the order of the rulebook or of the sheet.

type jsonRun struct {
	Caution   string      `json:"caution"`
	Bulletins string      `json:"bulletins"`
	Dates     string      `json:"date_caution"`
	Format    int         `json:"format"`
	Program   jsonProgram `json:"program"`
	Day       string      `json:"day"`
	Today     bool        `json:"day_is_today"`
	Stage     string      `json:"stage"`
	Only      []string    `json:"only"`
	Checks    []jsonCheck `json:"checks"`
}

type jsonProgram struct {
	Name    string `json:"name"`
	Version string `json:"version"`
}

type jsonCheck struct {
	Rulebook   jsonRulebook   `json:"rulebook"`
	InForce    bool           `json:"in_force"`
	Outside    string         `json:"not_in_force"` // "" where it is
	Sheet      jsonSheet      `json:"sheet"`
	Worst      string         `json:"worst"`
	Counts     map[string]int `json:"counts"`
	Advice     map[string]int `json:"advice_counts"`
	NotDue     int            `json:"not_due"`
	ForAPerson int            `json:"for_a_person"`
	ToLookAt   int            `json:"to_look_at"`
	Papers     []jsonPaper    `json:"papers"`
	Chapters   []jsonChapter  `json:"chapters"`
}

type jsonRulebook struct {
	Name     string `json:"name"`
	Edition  string `json:"edition"`
	Hash     string `json:"hash"`
	Standing string `json:"standing"`
}

type jsonSheet struct {
	File string `json:"file"`
	Car  string `json:"car"`
	Hash string `json:"hash"`
}

type jsonChapter struct {
	Number  string       `json:"number"`
	Title   string       `json:"title"`
	Worst   string       `json:"worst"`
	Clauses []jsonClause `json:"clauses"`
}

type jsonClause struct {
	Number   string        `json:"number"`
	Title    string        `json:"title"`
	Concern  string        `json:"concern"`
	Page     string        `json:"page"`
	Stage    string        `json:"stage"`
	TextAt   string        `json:"text_at"`
	LookFor  string        `json:"look_for"`
	Rectify  string        `json:"rectify"`
	NotDue   bool          `json:"not_due"`
	Verdict  string        `json:"verdict"` // "" where not due, and of a remark
	Note     string        `json:"note"`
	Remark   bool          `json:"remark"`
	Subjects []jsonSubject `json:"subjects"`
}

type jsonSubject struct {
	Name           string         `json:"name"` // "" for the car as a whole
	Verdict        string         `json:"verdict"`
	Decided        []jsonDecided  `json:"decided"`
	Causes         []jsonCause    `json:"causes"`
	MissingPapers  []string       `json:"missing_papers"`
	OutdatedPapers []jsonOutdated `json:"outdated_papers"`
	Dispensation   string         `json:"dispensation"`
	Notes          []string       `json:"notes"`
	Place          *jsonPlace     `json:"place,omitempty"`
}

type jsonOutdated struct {
	Label string `json:"label"`
	Why   string `json:"why"`
}

type jsonPaper struct {
	Label      string     `json:"label"`
	Part       string     `json:"part"`
	File       string     `json:"file"`
	Found      bool       `json:"found"`
	Hash       string     `json:"sha256"`
	Dated      string     `json:"dated"`
	ValidUntil string     `json:"valid_until"`
	Place      *jsonPlace `json:"place,omitempty"`
}

type jsonDecided struct {
	What    string     `json:"what"`
	Reading string     `json:"reading"`
	Sense   string     `json:"sense"`
	Limit   string     `json:"limit"`
	Margin  string     `json:"margin"`
	Note    string     `json:"note"`
	Truth   string     `json:"truth"`
	Place   *jsonPlace `json:"place,omitempty"`
}

type jsonCause struct {
	Kind       string     `json:"kind"`
	Text       string     `json:"text"`
	Part       string     `json:"part"`
	Particular string     `json:"particular"`
	How        string     `json:"how"`
	Place      *jsonPlace `json:"place,omitempty"`
}

type jsonPlace struct {
	File   string `json:"file"`
	Line   int    `json:"line"`
	Column int    `json:"column"`
}
