package main

import (
	"bufio"
	"bytes"
	"errors"
	"fmt"
	"io"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

// echo answers a line with itself, after a while for those that begin with "slow". The
// line "panic" brings about a fault of our own.
type echo struct{}

func (echo) answer(_ int, line []byte) []byte {
	if bytes.HasPrefix(line, []byte("slow")) {
		time.Sleep(5 * time.Millisecond)
	}
	if string(line) == "panic" {
		panic("on purpose")
	}
	return append([]byte("<"), append(line, '>')...)
}

func (echo) tooLong(number int) []byte        { return fmt.Appendf(nil, "line %d is too long", number) }
func (echo) failed(_ int, line []byte) []byte { return append([]byte("failed "), line...) }

func answers(t *testing.T, in string, workers int) (string, error) {
	t.Helper()
	var out bytes.Buffer
	all := make([]answerer, workers)
	for i := range all {
		all[i] = echo{}
	}
	err := answerLines(strings.NewReader(in), &out, all)
	return out.String(), err
}

func TestAnswersKeepTheOrderOfTheLines(t *testing.T) {
	var in, want strings.Builder
	for i := range 500 {
		word := "line"
		if i%7 == 0 {
			word = "slow"
		}
		fmt.Fprintf(&in, "%s %d\n", word, i)
		fmt.Fprintf(&want, "<%s %d>\n", word, i)
	}
	for _, workers := range []int{1, 2, 8} {
		out, err := answers(t, in.String(), workers)
		require.NoError(t, err)
		require.Equal(t, want.String(), out)
	}
}

func TestLineEnds(t *testing.T) {
	for in, want := range map[string]string{
		"":            "",
		"a":           "<a>\n",
		"a\n":         "<a>\n",
		"a\r\nb\r\n":  "<a>\n<b>\n",
		"\n":          "<>\n",
		"a\n\nb":      "<a>\n<>\n<b>\n",
		"no end\rhas": "<no end\rhas>\n",
	} {
		out, err := answers(t, in, 2)
		require.NoError(t, err)
		require.Equal(t, want, out, "%q", in)
	}
}

func TestLongLines(t *testing.T) {
	just := strings.Repeat("x", longestLine)
	out, err := answers(t, just+"\n"+just+"y\n"+strings.Repeat("z", 3*longestLine)+"\nafter\n", 2)
	require.NoError(t, err)
	lines := strings.Split(strings.TrimSpace(out), "\n")
	require.Len(t, lines, 4)
	require.Equal(t, "<"+just+">", lines[0])
	require.Equal(t, []string{"line 2 is too long", "line 3 is too long", "<after>"}, lines[1:])
}

func TestAFaultOfOurOwnIsAnsweredAndTold(t *testing.T) {
	out, err := answers(t, "a\npanic\nb\n", 2)
	require.Equal(t, "<a>\nfailed panic\n<b>\n", out)
	var own *panicked
	require.True(t, errors.As(err, &own))
	require.Equal(t, "on purpose", own.Error())
	require.Contains(t, string(own.stack), "answer")
}

// A program that sends a line and waits for the answer before it sends the next gets it.
func TestAnswersComeAtOnce(t *testing.T) {
	questions, send := io.Pipe()
	receive, replies := io.Pipe()
	finished := make(chan error, 1)
	go func() {
		finished <- answerLines(questions, replies, []answerer{echo{}, echo{}})
	}()
	reader := bufio.NewReader(receive)
	for i := range 20 {
		_, err := fmt.Fprintf(send, "line %d\n", i)
		require.NoError(t, err)
		answer, err := reader.ReadString('\n')
		require.NoError(t, err)
		require.Equal(t, fmt.Sprintf("<line %d>\n", i), answer)
	}
	require.NoError(t, send.Close())
	require.NoError(t, <-finished)
}

// brokenWriter fails after some bytes, as a full disk does.
type brokenWriter struct{ room int }

func (w *brokenWriter) Write(data []byte) (int, error) {
	if w.room -= len(data); w.room < 0 {
		return 0, errors.New("no room")
	}
	return len(data), nil
}

func TestFaultsOfTheStreams(t *testing.T) {
	in := strings.NewReader(strings.Repeat("line\n", 200_000))
	require.EqualError(t, answerLines(in, &brokenWriter{room: 100_000}, []answerer{echo{}}), "no room")

	var out bytes.Buffer
	broken := io.MultiReader(strings.NewReader("a\nb\n"), errorReader{})
	err := answerLines(broken, &out, []answerer{echo{}})
	require.EqualError(t, err, "The lines cannot be read: cut off.")
	require.Equal(t, "<a>\n<b>\n", out.String(), "what could be read is answered")
}

type errorReader struct{}

func (errorReader) Read([]byte) (int, error) { return 0, errors.New("cut off") }
