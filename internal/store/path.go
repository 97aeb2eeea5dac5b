package store

import (
	"fmt"
	"os"
	"path/filepath"
)

// DefaultPath returns where a gym's file lies when nobody says otherwise: in the
// system's folder for one person's settings. It makes no folder.
func DefaultPath() (string, error) {
	base, err := os.UserConfigDir()
	if err != nil {
		return "", fmt.Errorf("find the data folder: %w; name a file with -db", err)
	}
	return filepath.Join(base, "windlass", "gym.windlass"), nil
}
