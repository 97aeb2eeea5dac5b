package main

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"
)

// What a machine keeps of its own, each in a small file: another machine of the same
// gym has other screens and other speakers.
const (
	monitorKept = "wall-monitor" // the screen that the wall was on last
	speakerKept = "speaker"      // the chosen one
)

// keptPath is where a machine keeps something.
func keptPath(what string) (string, error) {
	dir, err := os.UserConfigDir()
	if err != nil {
		return "", err
	}
	return filepath.Join(dir, "windlass", what+".txt"), nil
}

// recall returns what this machine keeps, or nothing: one that remembers nothing
// chooses anew.
func recall(what string) string {
	path, err := keptPath(what)
	if err != nil {
		return ""
	}
	text, err := os.ReadFile(path)
	if err != nil {
		return ""
	}
	return strings.TrimSpace(string(text))
}

// keepHere keeps something on this machine. A reader sees it whole or as it was: the
// desk and its wall are two programs.
func keepHere(what, text string) error {
	path, err := keptPath(what)
	if err == nil {
		err = replaceText(path, text)
	}
	if err != nil {
		return fmt.Errorf("keep the %s of this machine: %w", what, err)
	}
	return nil
}

func replaceText(path, text string) error {
	if err := os.MkdirAll(filepath.Dir(path), 0o700); err != nil {
		return err
	}
	fresh := path + ".new"
	if err := os.WriteFile(fresh, []byte(text+"\n"), 0o600); err != nil {
		return err
	}
	if err := os.Rename(fresh, path); err != nil {
		return errors.Join(err, os.Remove(fresh))
	}
	return nil
}
