// Package clock tells what a class's clock shows at an instant.
//
// Most callers need [Climb] for the timed climb and [Workout] for the
// conditioning; [ClimbCues] lists what changes between two instants, for sound.
// Every answer is a pure function of the plan, the stored [gym.Run] and the
// instant handed in: two programs that read the same file show the same second,
// a clock never drifts, and a late tick is never made up for. The package keeps
// no time of its own, starts no goroutine and computes no loads.
package clock
