package room

import "context"

// Job is a piece of long work that can be watched and cancelled.
type Job struct {
	ctx      context.Context
	progress func(done, of int)
}

// NewJob returns a job that ends with ctx and reports progress to a function,
// which is called on the goroutine of the work.
func NewJob(ctx context.Context, progress func(done, of int)) *Job {
	return &Job{ctx: ctx, progress: progress}
}

// Context is cancelled when the coach cancels the work.
func (j *Job) Context() context.Context { return j.ctx }

// Progress says how much is done, of how much; of is 0 where nobody knows.
func (j *Job) Progress(done, of int) { j.progress(done, of) }
