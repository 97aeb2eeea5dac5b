// Command drawicon draws the program's mark: a windlass drum that is also a
// loaded bar, chalk on ink, with one turn of rope paid out.
//
// It needs nothing but the standard library and always writes the same pixels,
// so icon.png can be checked against it. Run it with go generate in assets/.
package main

import (
	"bytes"
	"flag"
	"fmt"
	"image/png"
	"os"
)

func main() {
	out := flag.String("o", "icon.png", "file to write")
	flag.Parse()
	if err := write(*out); err != nil {
		fmt.Fprintln(os.Stderr, err)
		os.Exit(1)
	}
}

func write(path string) error {
	var file bytes.Buffer
	enc := png.Encoder{CompressionLevel: png.BestCompression}
	if err := enc.Encode(&file, draw(512)); err != nil {
		return fmt.Errorf("encode icon: %w", err)
	}
	if err := os.WriteFile(path, file.Bytes(), 0o644); err != nil {
		return fmt.Errorf("write icon: %w", err)
	}
	return nil
}
