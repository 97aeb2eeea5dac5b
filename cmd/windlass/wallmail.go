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

// The desk asks its wall for a few things over a local socket, and the wall its desk
// for one; a desk that was killed and started again finds the wall that it left behind.
//
//	request = ( "next" | "close" | "reading" | "front" ) "\n"
//	answer  = "done" [ " " sentence ] "\n"
const (
	askNext    = "next"
	askClose   = "close"
	askReading = "reading" // how much of the class it shows at once
	askFront   = "front"   // of the desk: to take the keyboard
	answered   = "done"
)

// longestLine is how many bytes a request or an answer has at most.
const longestLine = 400

// mailPatience is how long one of the two waits for the other.
const mailPatience = time.Second

var errNoWall = errors.New("there is no wall")

// mailPath is where the wall of a file listens, and deskPath where its desk does.
func mailPath(db string) string { return socketPath("wall", db) }

func deskPath(db string) string { return socketPath("desk", db) }

// socketPath is a short name, since the systems allow about a hundred letters.
func socketPath(of, db string) string {
	if whole, err := filepath.Abs(db); err == nil {
		db = whole
	}
	sum := sha256.Sum256([]byte(db))
	return filepath.Join(os.TempDir(), fmt.Sprintf("windlass-%s-%x", of, sum[:8]))
}

// listenForDesk opens the wall's socket. A second wall of the same file is
// refused; what a killed wall left behind is taken away.
func listenForDesk(db string) (net.Listener, error) {
	path := mailPath(db)
	if c, err := net.DialTimeout("unix", path, mailPatience); err == nil {
		_ = c.Close()
		return nil, fmt.Errorf("show the wall: %s has a wall already; use that one", db)
	}
	mail, err := listenAt(path)
	if err != nil {
		return nil, fmt.Errorf("show the wall: %w", err)
	}
	return mail, nil
}

// listenForWall opens the desk's socket. A file has one desk: what lies there was
// left behind.
func listenForWall(db string) (net.Listener, error) {
	mail, err := listenAt(deskPath(db))
	if err != nil {
		return nil, fmt.Errorf("listen for the wall: %w", err)
	}
	return mail, nil
}

func listenAt(path string) (net.Listener, error) {
	if err := os.Remove(path); err != nil && !errors.Is(err, os.ErrNotExist) {
		return nil, err
	}
	mail, err := net.Listen("unix", path)
	if err != nil {
		return nil, err
	}
	if err := os.Chmod(path, 0o600); err != nil {
		_ = mail.Close()
		return nil, err
	}
	return mail, nil
}

// serve does what is asked for, until the socket is closed.
func serve(mail net.Listener, do map[string]func() string) {
	for {
		conn, err := mail.Accept()
		if err != nil {
			return
		}
		answer(conn, do)
	}
}

// answer does one thing; who is gone by then needs no answer.
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
	return ask(conn, request)
}

// askDesk asks the desk of a file for something, if it has one: a wall goes on without.
func askDesk(db, request string) {
	conn, err := net.DialTimeout("unix", deskPath(db), mailPatience)
	if err != nil {
		return
	}
	_, _ = ask(conn, request) // what a desk that hangs does not do is done by hand
}

// ask sends a request and waits for the answer.
func ask(conn net.Conn, request string) (string, error) {
	defer conn.Close()
	if _, err := io.WriteString(conn, request+"\n"); err != nil {
		return "", fmt.Errorf("ask for %q: %w", request, err)
	}
	line, err := readLine(conn)
	if err != nil {
		return "", fmt.Errorf("ask for %q: the other window does not answer: %w; close the wall and open it again", request, err)
	}
	return strings.TrimSpace(strings.TrimPrefix(line, answered)), nil
}
