package main

import (
	"bufio"
	"crypto/sha256"
	"errors"
	"fmt"
	"io"
	"net"
	"os"
	"path/filepath"
	"strings"
	"time"
)

// The desk asks its wall for a few things over a local socket; a desk that was
// killed and started again finds the wall that it left behind.
//
//	request = ( "next" | "close" | "reading" ) "\n"
//	answer  = "done" [ " " sentence ] "\n"
const (
	askNext    = "next"
	askClose   = "close"
	askReading = "reading" // how much of the class it shows at once
	answered   = "done"
)

// longestLine is how many bytes a request or an answer has at most.
const longestLine = 400

// mailPatience is how long one of the two waits for the other.
const mailPatience = time.Second

var errNoWall = errors.New("there is no wall")

// mailPath is where the wall of a file listens: a short name, since the systems
// allow about a hundred letters.
func mailPath(db string) string {
	if whole, err := filepath.Abs(db); err == nil {
		db = whole
	}
	sum := sha256.Sum256([]byte(db))
	return filepath.Join(os.TempDir(), fmt.Sprintf("windlass-wall-%x", sum[:8]))
}

// listenForDesk opens the wall's socket. A second wall of the same file is
// refused; what a killed wall left behind is taken away.
func listenForDesk(db string) (net.Listener, error) {
	path := mailPath(db)
	if c, err := net.DialTimeout("unix", path, mailPatience); err == nil {
		_ = c.Close()
		return nil, fmt.Errorf("show the wall: %s has a wall already; use that one", db)
	}
	if err := os.Remove(path); err != nil && !errors.Is(err, os.ErrNotExist) {
		return nil, fmt.Errorf("show the wall: %w", err)
	}
	mail, err := net.Listen("unix", path)
	if err != nil {
		return nil, fmt.Errorf("show the wall: %w", err)
	}
	if err := os.Chmod(path, 0o600); err != nil {
		_ = mail.Close()
		return nil, fmt.Errorf("show the wall: %w", err)
	}
	return mail, nil
}

// serve does what the desk asks for, until the socket is closed.
func serve(mail net.Listener, do map[string]func() string) {
	for {
		conn, err := mail.Accept()
		if err != nil {
			return
		}
		answer(conn, do)
	}
}

// answer does one thing; a desk that is gone by then needs no answer.
func answer(conn net.Conn, do map[string]func() string) {
	defer conn.Close()
	request, err := readLine(conn)
	if err != nil {
		return
	}
	if f, ok := do[request]; ok {
		_, _ = io.WriteString(conn, strings.TrimSpace(answered+" "+f())+"\n")
	}
}

// readLine reads one line within the patience.
func readLine(conn net.Conn) (string, error) {
	if err := conn.SetDeadline(time.Now().Add(mailPatience)); err != nil {
		return "", err
	}
	line, err := bufio.NewReader(io.LimitReader(conn, longestLine)).ReadString('\n')
	return strings.TrimSpace(line), err
}

// askWall asks the wall of a file for something and returns the sentence that it
// answers with, if any; errNoWall where there is none.
func askWall(db, request string) (string, error) {
	conn, err := net.DialTimeout("unix", mailPath(db), mailPatience)
	if err != nil {
		return "", errNoWall
	}
	defer conn.Close()
	if _, err := io.WriteString(conn, request+"\n"); err != nil {
		return "", fmt.Errorf("ask the wall: %w", err)
	}
	line, err := readLine(conn)
	if err != nil {
		return "", fmt.Errorf("ask the wall: it does not answer: %w; close its window and open it again", err)
	}
	return strings.TrimSpace(strings.TrimPrefix(line, answered)), nil
}
