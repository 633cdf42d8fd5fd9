package main

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func TestLinesThatAreNoJSON(t *testing.T) {
	for _, c := range []struct{ line, want string }{
		{`not JSON`, `column 1: Found not without quotes. Texts and names stand in double quotes; only true, false and null stand without.`},
		{`{"id":1,"formula":"1"`, `column 22: The line ends too soon. A quote, a bracket or a value is missing.`},
		{`{"id":1,"formula":"1}`, `column 22: The line ends too soon. A quote, a bracket or a value is missing.`},
		{`{"id":1,"formula":}`, `column 19: Found '}' where something else is wanted. Look for a comma, colon, quote or bracket that is missing or too many.`},
		{`{"id":1 "formula":"1"}`, `column 9: Found '"' where something else is wanted. Look for a comma, colon, quote or bracket that is missing or too many.`},
		{`{"id":1"formula":"1"}`, `column 8: Found '"' where something else is wanted. Look for a comma, colon, quote or bracket that is missing or too many.`},
		{`{"é":x}`, `column 6: Found x without quotes. Texts and names stand in double quotes; only true, false and null stand without.`},
		{`{formula:"1"}`, `column 2: Found formula without quotes. Texts and names stand in double quotes; only true, false and null stand without.`},
		{`{"a":True}`, `column 6: Found True without quotes. Texts and names stand in double quotes; only true, false and null stand without.`},
		{`{"a":tru}`, `column 6: Found tru without quotes. Texts and names stand in double quotes; only true, false and null stand without.`},
		{`{'a':1}`, `column 2: Found a single quote. Texts and names stand in double quotes.`},
		{`{"a":1,}`, `column 7: Found a comma with nothing between it and the }. Take it out.`},
		{`{"a":[1, 2, ]}`, `column 11: Found a comma with nothing between it and the ]. Take it out.`},
		{`{"a":.5}`, `column 6: Found .5, which is no number as JSON has it. Write it as 2, -0.5 or 1.5e3.`},
		{`{"a":1.}`, `column 6: Found 1., which is no number as JSON has it. Write it as 2, -0.5 or 1.5e3.`},
		{`{"a":01}`, `column 6: Found 01, which is no number as JSON has it. Write it as 2, -0.5 or 1.5e3.`},
		{`{"a":1,5}`, `column 8: Found 5 out of place. Names stand in double quotes, a colon behind a name, a comma between two values.`},
		{`{"a":"\d"}`, `column 8: Behind \ in a text stands one of " \ / b f n r t, or u and four digits from 0 to f.`},
		{`{"a":"\u12g4"}`, `column 11: Behind \ in a text stands one of " \ / b f n r t, or u and four digits from 0 to f.`},
		{"{\"a\":\"x\ty\"}", `column 8: Found a control character. In a text it is written as \t, \n or \u0000.`},
	} {
		_, err := readQuestion([]byte(c.line))
		require.EqualError(t, err, "The line is not JSON: "+c.want, c.line)
	}
}
