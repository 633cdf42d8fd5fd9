package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"runtime"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/engine"
)

func emptyWorker() *lineWorker {
	return &lineWorker{bench: engine.EmptyBench(20891), scope: engine.EmptyScope()}
}

// answerFields reads an answer.
func answerFields(t *testing.T, line string) map[string]any {
	t.Helper()
	var fields map[string]any
	require.NoError(t, json.Unmarshal(emptyWorker().answer(7, []byte(line)), &fields))
	return fields
}

func TestLineValues(t *testing.T) {
	for _, c := range []struct{ value, formula, want string }{
		{`true`, `x`, `{"kind":"truth","truth":"yes","missing":[]}`},
		{`false`, `not x`, `{"kind":"truth","truth":"yes","missing":[]}`},
		{`3`, `x == 3`, `{"kind":"truth","truth":"yes","missing":[]}`},
		{`3`, `x in 1..3`, `{"kind":"truth","truth":"yes","missing":[]}`},
		{`-0.5e1`, `x`, `{"kind":"number","low":-5,"high":-5}`},
		{`"Main  Hoop"`, `x == 'main hoop'`, `{"kind":"truth","truth":"yes","missing":[]}`},
		{`{"value":1.75,"unit":"in"}`, `x == 44.45*mm`, `{"kind":"truth","truth":"yes","missing":[]}`},
		{`{"number":2}`, `x`, `{"kind":"number","low":2,"high":2}`},
		{`{"low":1}`, `x`, `{"kind":"number","low":1,"high":null}`},
		{`{"high":1,"unit":null}`, `x`, `{"line":7,"error":"x: unit wants a text in double quotes; found null."}`},
		{`{"low":"-inf","high":-1}`, `x`, `{"kind":"number","low":null,"high":-1}`},
		{`{"low":5e-324,"high":1.7976931348623157e308}`, `x`, `{"kind":"number","low":5e-324,"high":1.7976931348623157e+308}`},
		{`{"low":"inf"}`, `x`, `{"line":7,"error":"x: No number lies from low \"inf\" to high . low is the lesser."}`},
		{`{"low":"one"}`, `x`, `{"line":7,"error":"x: Found \"one\" where a number is wanted. Write a number, null, \"inf\" or \"-inf\"."}`},
		{`{"value":"inf"}`, `x`, `{"line":7,"error":"x: Found \"inf\" where a number is wanted."}`},
		{`{"low":1,"date":"2024-02-29"}`, `x`, `{"line":7,"error":"x: Found date beside low, which do not go together."}`},
		{`{"unit":"mm"}`, `x`, `{"line":7,"error":"x: Found an object that holds no value. Write {\"low\": 1, \"high\": 2, \"unit\": \"mm\"}, {\"missing\": \"length\"} or {\"date\": \"2024-02-29\"}."}`},
		{`{"loww":1}`, `x`, `{"line":7,"error":"x: Found the name \"loww\", which means nothing here. Did you mean low? Known are missing, low, high, value, number, unit, figure, date, from, to."}`},
		{`{"date":"2024-02"}`, `x`, `{"kind":"date","from":"2024-02-01","to":"2024-02-29"}`},
		{`{"from":"2024-02-28","to":"2024-03-01"}`, `days_after(x, 1)`, `{"kind":"date","from":"2024-02-29","to":"2024-03-02"}`},
		{`{"from":"2024-02-28"}`, `x`, `{"line":7,"error":"x: A time has both ends: from and to."}`},
		{`{"from":"2024-02-28","to":"2024-02-27"}`, `x`, `{"line":7,"error":"x: No day lies from 2024-02-28 to 2024-02-27."}`},
		{`{"figure":"45 ± 0.5 mm"}`, `x`, `{"kind":"number","low":44.5,"high":45.5,"unit":"mm"}`},
		{`{"missing":"date"}`, `x`, `{"kind":"date","from":null,"to":null}`},
		{`{"missing":"length"}`, `x > 0`, `{"kind":"truth","truth":"open","missing":["x"]}`},
		{`{"value":0,"unit":"degC"}`, `x == celsius(0)`, `{"kind":"truth","truth":"yes","missing":[]}`},
		{`[true,false]`, `any(x, #)`, `{"kind":"truth","truth":"yes","missing":[]}`},
		{`[1,"a"]`, `x`, `{"line":7,"error":"x: the list x mixes kinds: its first value and its value 2 differ."}`},
		{`[]`, `count(x)`, `{"kind":"number","low":0,"high":0}`},
		{`1, "x": 2`, `x`, `{"line":7,"error":"The name \"x\" is said twice. Keep one."}`},
	} {
		line := fmt.Sprintf(`{"formula":%s,"let":{"x":%s}}`, quoteJSON(c.formula), c.value)
		require.Equal(t, c.want, string(emptyWorker().answer(7, []byte(line))), line)
	}
}

func quoteJSON(text string) string {
	quoted, err := json.Marshal(text)
	if err != nil {
		panic(err)
	}
	return string(quoted)
}

func TestLineIDsAreGivenBack(t *testing.T) {
	for _, id := range []string{`1`, `"a\u001b"`, `{"run":[1,2]}`, `null`, `1e400`, `0.10`} {
		answer := emptyWorker().answer(7, []byte(`{"formula":"1","id":`+id+`}`))
		require.True(t, bytes.HasPrefix(answer, []byte(`{"id":`+id+`,"kind":"number"`)), "%s", answer)
		answer = emptyWorker().answer(7, []byte(`{"id":`+id+`,"formula":"1 +"}`))
		require.True(t, bytes.HasPrefix(answer, []byte(`{"id":`+id+`,"error":"`)), "%s", answer)
	}
}

// An answer that is open says why where nothing is missing, and only there.
func TestLinesOpenBy(t *testing.T) {
	for _, c := range []struct{ formula, let, want string }{
		{`x >= 2*mm`, `{"x":{"figure":"2.02 mm +/- 0.05 mm"}}`, `"missing":[],"open_by":["tolerance of x"]}`},
		{`a > b`, `{"a":{"from":"2024-01-01","to":"2024-03-01"},"b":{"date":"2024-02"}}`, `"missing":[],"open_by":["tolerance of a","tolerance of b"]}`},
		{`x >= 2*mm and b`, `{"x":{"figure":"2.02 mm +/- 0.05 mm"},"b":{"missing":"truth"}}`, `"missing":["b"]}`},
		{`1 / y > 1`, `{"y":{"low":0,"high":2}}`, `"open_by":["tolerance of y","undefined: a division by what may be zero, or a root of what may be negative"]}`},
	} {
		answer := string(emptyWorker().answer(7, []byte(`{"formula":`+quoteJSON(c.formula)+`,"let":`+c.let+`}`)))
		require.Contains(t, answer, `"truth":"open"`)
		require.True(t, strings.HasSuffix(answer, c.want), answer)
	}
	require.NotContains(t, string(emptyWorker().answer(7, []byte(`{"formula":"1 < 2"}`))), "open_by")
}

func TestLineNames(t *testing.T) {
	require.Equal(t, "7", fmt.Sprint(answerFields(t, `{"formula":"mm","let":{"mm":7}}`)["low"]), "a name handed in goes before a unit")
	require.Contains(t, answerFields(t, `{"formula":"1","let":{"a b":7}}`)["error"], `"a b" cannot be a name in a formula`)
	require.Contains(t, answerFields(t, "{\"formula\":\"'\xff'\"}")["error"], "The line is not UTF-8.")
	require.Contains(t, answerFields(t, `{"formula":"1"} {"formula":"2"}`)["error"], "Found more behind the JSON object")
	require.Contains(t, answerFields(t, `{"formula":3}`)["error"], "formula wants a text in double quotes; found 3.")
	require.Contains(t, answerFields(t, `{"formula":"1*mm","unit":"cubit"}`)["error"], "cubit")
}

// FuzzTryLine sends lines of any content. Each answer is one line of JSON that is either an
// error or of a kind, gives the id back, and holds nothing that steers a terminal.
func FuzzTryLine(f *testing.F) {
	for _, seed := range []string{
		`{"id":1,"formula":"x >= 44.45*mm","let":{"x":{"low":1.75,"high":1.75,"unit":"in"}}}`,
		`{"id":1,"formula":"a and x <= 5*mm","let":{"a":true,"b":{"missing":"truth"},"x":{"low":1.2,"high":1.4,"unit":"mm"},"n":3,"t1":"text","d":{"date":"2024-02-29"},"list":[1,2]},"unit":"in"}`,
		`{"formula":"max(list)","let":{"list":[]}}`,
		`{"formula":"months_after(d, n)","let":{"d":{"missing":"date"},"n":{"low":-1e300,"high":1e300}}}`,
		`{"formula":"x / y","let":{"x":{"low":null},"y":{"low":0,"high":"inf"}},"unit":"kg"}`,
		`{"formula":"t contains 'a' ? 1 : 2","let":{"t":{"missing":"text"}}}`,
		`{"formula":"sqrt(x) ** 3 - sin(y)","let":{"x":{"low":-1,"high":4},"y":{"value":1e308,"unit":"deg"}}}`,
		`{"id":"` + "\u202e\u009b" + `","formula":"((((("}`,
		"{\"formula\":\"1\",\"id\":\"\xff\"}", `[`, ``, `{}`, `{"id":`, `{"formula":"","let":[]}`,
		`{"formula":"map(filter(list, # > 1), # * 2)","let":{"list":[1,2,{"low":0,"high":5}]}}`,
	} {
		f.Add([]byte(seed))
	}
	worker := emptyWorker()
	f.Fuzz(func(t *testing.T, line []byte) {
		if len(line) > 1<<14 {
			return
		}
		answer := worker.answer(7, line)
		require.Empty(t, firstSteering(string(answer)), "%q", answer)
		require.NotContains(t, string(answer), "\n")
		var fields map[string]any
		require.NoError(t, json.Unmarshal(answer, &fields))
		kind, isAnswer := fields["kind"]
		message, isError := fields["error"]
		require.NotEqual(t, isAnswer, isError, "%s", answer)
		if isError {
			require.NotEmpty(t, message)
		} else {
			require.Contains(t, []any{"truth", "number", "date", "text", "list"}, kind)
		}
		require.Equal(t, string(answer), string(worker.answer(7, line)), "the same line, the same answer")
	})
}

// BenchmarkTryLines works distinct formulas from JSON to JSON on all cores and prints how
// many it does a second. The goal is 20,000 on two cores.
func BenchmarkTryLines(b *testing.B) {
	var lines strings.Builder
	const count = 20_000
	for i := range count {
		fmt.Fprintf(&lines, `{"id":%d,"formula":"a and x %s %d.%d*mm or n >= %d","let":{"a":true,"b":{"missing":"truth"},"x":{"low":1.2,"high":1.4,"unit":"mm"},"n":3}}`+"\n",
			i, []string{"<=", ">=", "<", ">"}[i%4], i%7, i, i)
	}
	workers := make([]answerer, runtime.GOMAXPROCS(0))
	for i := range workers {
		workers[i] = emptyWorker()
	}
	for b.Loop() {
		var out bytes.Buffer
		if err := answerLines(strings.NewReader(lines.String()), &out, workers); err != nil {
			b.Fatal(err)
		}
		if bytes.Contains(out.Bytes(), []byte(`"error"`)) {
			b.Fatal("a formula was answered with an error")
		}
	}
	b.ReportMetric(float64(count)*float64(b.N)/b.Elapsed().Seconds(), "formulas/s")
}
