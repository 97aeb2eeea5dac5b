package look

import "image/color"

// Meaning says what a colour stands for. Widgets ask for a meaning and never
// for a shade, so a palette can change without them.
type Meaning uint8

// The meanings. The grounds come first, then what lies upon them.
const (
	Ground    Meaning = iota // behind everything
	Surface                  // a card or panel on the ground
	Raised                   // a control or a header on a surface
	Hover                    // a control under the pointer
	Selection                // the chosen row or cell, and marked text

	Text   // what is read first
	Muted  // what explains it
	Accent // the one action that matters, and the present moment
	Good   // done, kept, held
	Warn   // needs a look
	Bad    // wrong or refused
	Edge   // the outline of a control
	Focus  // the ring around what the keyboard speaks to

	ZoneLight   // the light rungs of a climb
	ZoneWorking // the working rungs
	ZoneTop     // the top rungs, where records fall

	OnAccent // text on Accent
	OnBad    // text on Bad
	OnZone   // text on any of the three zones

	Line // a hairline that parts two things; decoration, never the only cue
	Veil // what dims the room behind a question

	meanings int = iota
)

// Palette is one shade for every meaning.
type Palette [meanings]color.NRGBA

// Dark is chalk on ink, for a room with the lights down. The zones are sky
// blue, yellow and vermillion of Okabe and Ito's palette for all kinds of
// colour sight (Color Universal Design, 2002).
func Dark() Palette {
	return Palette{
		Ground: rgb(0x10161C), Surface: rgb(0x18212A), Raised: rgb(0x22303C),
		Hover: rgb(0x263542), Selection: rgb(0x153C3B),
		Text: rgb(0xF3EFE6), Muted: rgb(0xAEB8C0), Accent: rgb(0x3FC1B0),
		Good: rgb(0x7BCF94), Warn: rgb(0xF2B84B), Bad: rgb(0xFF8F80),
		Edge: rgb(0x748594), Focus: rgb(0x9AE6DA),
		ZoneLight: rgb(0x56B4E9), ZoneWorking: rgb(0xF0E442), ZoneTop: rgb(0xD55E00),
		OnAccent: rgb(0x0B1418), OnBad: rgb(0x2A0805), OnZone: rgb(0x0B1014),
		Line: rgb(0x364552), Veil: {A: 0xB0},
	}
}

// Light is ink on chalk paper, for daylight and projectors. The zones keep the
// hues of [Dark], deep enough to be seen on paper.
func Light() Palette {
	return Palette{
		Ground: rgb(0xF3F0E8), Surface: rgb(0xFCFBF7), Raised: rgb(0xE8E3D7),
		Hover: rgb(0xE1DBCD), Selection: rgb(0xCDE7E2),
		Text: rgb(0x17212A), Muted: rgb(0x515C66), Accent: rgb(0x096A60),
		Good: rgb(0x1A6A37), Warn: rgb(0x7F5200), Bad: rgb(0xAF2619),
		Edge: rgb(0x766D5C), Focus: rgb(0x005A8C),
		ZoneLight: rgb(0x1673AE), ZoneWorking: rgb(0x857200), ZoneTop: rgb(0xB44A00),
		OnAccent: rgb(0xFFFFFF), OnBad: rgb(0xFFFFFF), OnZone: rgb(0xFFFFFF),
		Line: rgb(0xCFC8B8), Veil: {R: 0x17, G: 0x21, B: 0x2A, A: 0x80},
	}
}

func rgb(hex uint32) color.NRGBA {
	return color.NRGBA{R: uint8(hex >> 16), G: uint8(hex >> 8), B: uint8(hex), A: 0xFF}
}
