// Package tier finds the right weight for conditioning from what each athlete
// did before.
//
// A [Model] is what is known about one athlete at one movement: the chance of
// every load that it is the one a usual bout of which is held half of the time.
// A [Standing] is the whole gym's, with what the gym's own log teaches about
// its athletes and movements: how much each differs from what is expected of it, and
// the form of every athlete through time, which all of their movements share. Most
// callers need [Learn] and [Model.Suggest].
//
// The package promises that the chances come from a posterior computed on a
// grid, without sampling, that the same log gives the same suggestion, that a
// suggestion is a load the gym owns and never more than one implement above the
// heaviest the athlete ever held, that a load no bout vouches for, as at a first go,
// is hardly ever too heavy by what is known ([ByDoubt]), and that each says why in one
// sentence. In a gym where hardly anything but held is ever logged, the chances of
// heavier loads may be told too high: such a log says little of them. The package
// decides nothing: an override of the coach stands, with the suggestion beside
// it. It knows no injuries; what hurts is for the coach and a doctor to judge.
package tier
