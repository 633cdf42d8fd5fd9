package report

// The names of the fields below are told in SEASON_JSON.md and stay. Lists are in the order
// of the season, the command line, the rulebook or the sheet.

type jsonSeasonRun struct {
	Caution     string            `json:"caution"`
	DateCaution string            `json:"date_caution"`
	Bulletins   string            `json:"bulletins"`
	Format      int               `json:"format"`
	Program     jsonProgram       `json:"program"`
	Day         string            `json:"day"`
	Today       bool              `json:"day_is_today"`
	Until       string            `json:"looked_at_until"`
	Season      jsonSeason        `json:"season"`
	Rulebooks   []jsonRulebook    `json:"rulebooks"`
	Events      []jsonSeasonEvent `json:"events"`
	Renew       []jsonDated       `json:"renew"`
	Cars        []jsonSeasonCar   `json:"cars"`
}

type jsonSeason struct {
	Name   string      `json:"name"`
	Hash   string      `json:"hash"`
	Papers []jsonPaper `json:"papers"`
}

type jsonSeasonEvent struct {
	Name        string   `json:"name"`
	Place       string   `json:"place"`
	Class       string   `json:"class"`
	Crew        []string `json:"crew"`
	Inspection  string   `json:"inspection_day"`
	First       string   `json:"first_day"`
	Last        string   `json:"last_day"`
	EntryCloses string   `json:"entry_closes"`
	Over        bool     `json:"over"`
}

type jsonSeasonCar struct {
	Sheet   jsonSheet      `json:"sheet"`
	Papers  []jsonPaper    `json:"papers"`
	Events  []jsonCarEvent `json:"events"`
	Changes []jsonChange   `json:"changes"`
	Dated   []jsonDated    `json:"dated"`
}

type jsonCarEvent struct {
	Event      string         `json:"event"`
	Rulebook   string         `json:"rulebook"`
	Edition    string         `json:"edition"`
	Worst      string         `json:"worst"`
	Counts     map[string]int `json:"counts"`
	Advice     map[string]int `json:"advice_counts"`
	ForAPerson int            `json:"for_a_person"`
	Days       []jsonEventDay `json:"days"`
	NewGaps    []jsonRow      `json:"new_gaps"`
	Verdicts   []jsonVerdict  `json:"verdicts"`
	Clauses    []jsonClause   `json:"clauses"` // those that are a gap, open or under a dispensation
}

type jsonEventDay struct {
	Day    string         `json:"day"`
	Worst  string         `json:"worst"`
	Counts map[string]int `json:"counts"`
}

type jsonVerdict struct {
	Clause  string `json:"clause"`
	Verdict string `json:"verdict"`
}

type jsonRow struct {
	Clause  string `json:"clause"`
	Subject string `json:"subject"` // "" for the car as a whole
}

type jsonChange struct {
	Rulebook string   `json:"rulebook"`
	Clause   string   `json:"clause"`
	Title    string   `json:"title"`
	Subject  string   `json:"subject"`
	Verdicts []string `json:"verdicts"` // by event, "" at one that has no say
}

type jsonDated struct {
	Part       string      `json:"part"`
	Person     string      `json:"person"` // "" where it belongs to the car
	Cars       []string    `json:"cars"`
	Particular string      `json:"particular"`
	Renewal    string      `json:"renewal"`
	LastDay    string      `json:"last_day"`
	Over       bool        `json:"over"`
	Uncertain  bool        `json:"uncertain"`
	Clause     *jsonEnding `json:"clause"`
	Limit      string      `json:"limit"`
	Missed     string      `json:"missed"`
	AsEntered  string      `json:"as_entered"`
	LeadDays   int64       `json:"lead_days"`
	OrderBy    string      `json:"order_by"`
	Earliest   string      `json:"earliest"`
	EarliestOf string      `json:"earliest_of"`
	Latest     string      `json:"latest"`
	AnewFrom   string      `json:"anew_from"`
	AnewUntil  string      `json:"anew_until"`
	Spans      []jsonSpan  `json:"spans"`
	Place      *jsonPlace  `json:"place,omitempty"`
}

type jsonEnding struct {
	Number  string     `json:"number"`
	Title   string     `json:"title"`
	Concern string     `json:"concern"`
	Page    string     `json:"page"`
	Place   *jsonPlace `json:"place,omitempty"`
}

type jsonSpan struct {
	From    string `json:"from"`
	Until   string `json:"until"`
	Verdict string `json:"verdict"`
	Clause  string `json:"clause"` // its number, "" where all that read the dates are met
}
