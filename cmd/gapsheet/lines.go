package main

import (
	"bufio"
	"errors"
	"io"
	"runtime/debug"
)

// Bounds of work on lines. What waits at one time is at most pending lines of longestLine
// bytes.
const (
	longestLine = 1 << 20 // bytes
	pending     = 32      // lines read and not yet answered
)

// job is one line and, once done is closed, its answer.
type job struct {
	number int // of the line, from 1
	line   []byte
	tooBig bool
	answer []byte
	own    *panicked // a fault of our own in working it out
	done   chan struct{}
}

// answerer works out one line. Each worker has its own; it need not be safe for use by
// several. Lines are numbered from 1. The answer has no line break at its end.
type answerer interface {
	answer(number int, line []byte) []byte
	tooLong(number int) []byte             // the answer to a line over longestLine
	failed(number int, line []byte) []byte // the answer to a line that brought about a fault of our own
}

// answerLines reads lines and writes one answer for each, in their order. Workers work on
// several at once. An answer is written as soon as it is there and those before it are, so
// that a program that waits for it before sending the next line gets it. A fault of our own
// in one line is answered as such, the rest is still worked, and it is returned at the end.
func answerLines(in io.Reader, out io.Writer, workers []answerer) error {
	queue := make(chan *job, pending) // in the order of the lines
	work := make(chan *job, pending)
	for _, worker := range workers {
		go func() {
			for j := range work {
				j.work(worker)
			}
		}()
	}
	readFault := make(chan error, 1)
	stop := make(chan struct{})
	go func() {
		readFault <- readJobs(in, queue, work, stop)
		close(work)
		close(queue)
	}()
	err := writeAnswers(out, queue)
	close(stop)
	if err != nil {
		return err // the reader may wait for its next line for ever
	}
	return <-readFault
}

// readJobs turns lines into jobs until the end or until stop is closed.
func readJobs(in io.Reader, queue, work chan<- *job, stop <-chan struct{}) error {
	reader := bufio.NewReaderSize(in, 1<<16)
	for number := 1; ; number++ {
		line, tooBig, err := readLine(reader)
		if err == io.EOF && len(line) == 0 && !tooBig {
			return nil
		}
		if err != nil && err != io.EOF {
			return wrong("The lines cannot be read: %v.", err)
		}
		j := &job{number: number, line: line, tooBig: tooBig || len(line) > longestLine, done: make(chan struct{})}
		select {
		case queue <- j:
		case <-stop:
			return nil
		}
		work <- j
		if err == io.EOF {
			return nil
		}
	}
}

// readLine reads one line without its end. Of a line over longestLine nothing is kept.
func readLine(reader *bufio.Reader) (line []byte, tooBig bool, err error) {
	for {
		piece, err := reader.ReadSlice('\n')
		if !tooBig {
			line = append(line, piece...)
		}
		if len(line) > longestLine+2 {
			line, tooBig = nil, true
		}
		if errors.Is(err, bufio.ErrBufferFull) {
			continue
		}
		return trimEnd(line), tooBig, err
	}
}

func trimEnd(line []byte) []byte {
	for len(line) > 0 && (line[len(line)-1] == '\n' || line[len(line)-1] == '\r') {
		line = line[:len(line)-1]
	}
	return line
}

// writeAnswers writes the answers in the order of the queue.
func writeAnswers(out io.Writer, queue <-chan *job) error {
	writer := bufio.NewWriterSize(out, 1<<16)
	var own *panicked
	for j := range queue {
		select {
		case <-j.done:
		default:
			// About to wait: what is there already goes out first.
			if err := writer.Flush(); err != nil {
				return err
			}
			<-j.done
		}
		if own == nil {
			own = j.own
		}
		writer.Write(j.answer)
		writer.WriteByte('\n')
		if len(queue) == 0 {
			if err := writer.Flush(); err != nil {
				return err
			}
		}
	}
	if err := writer.Flush(); err != nil {
		return err
	}
	if own != nil {
		return own
	}
	return nil
}

// work answers a job. A fault of our own stays within it.
func (j *job) work(worker answerer) {
	defer close(j.done)
	defer func() {
		if cause := recover(); cause != nil {
			j.own = &panicked{cause, debug.Stack()}
			j.answer = worker.failed(j.number, j.line)
		}
	}()
	if j.tooBig {
		j.answer = worker.tooLong(j.number)
		return
	}
	j.answer = worker.answer(j.number, j.line)
}
