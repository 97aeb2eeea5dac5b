package look

// Spacing stands on a grid of four units; a unit is one pixel of a desk monitor
// at scale 1. The number counts the grid's steps.
const (
	Gap1 float32 = 4 * (iota + 1) // within one thing
	Gap2                          // between a thing and its label
	Gap3                          // between things of one kind
	Gap4                          // around the content of a card
	Gap5
	Gap6 // between cards
)

// Text sizes.
const (
	CaptionSize float32 = 12 // column headings, units, what explains
	BodySize    float32 = 14 // text
	LeadSize    float32 = 17 // the title of a card
	TitleSize   float32 = 24 // the title of a room
	NumberSize  float32 = 32 // the one figure of a card
)

// Heights and thicknesses.
const (
	ControlHeight float32 = 36 // buttons and fields
	RowHeight     float32 = 32 // a row of a list
	Hairline      float32 = 1  // a parting line
	RingWidth     float32 = 2  // the focus ring
	Radius        float32 = 6  // the corner of a control
	CardRadius    float32 = 10 // the corner of a card
)
