-- An athlete takes two of the implement at some movements, such as a pair of
-- dumbbells. Those of the built-in catalogue are named here as it names them now;
-- a movement of the gym's own takes one until its coach says otherwise.
ALTER TABLE movements ADD COLUMN pair INTEGER NOT NULL DEFAULT 0 CHECK (pair IN (0, 1));

UPDATE movements SET pair = 1 WHERE own = 0 AND key IN (
  'dumbbell-power-clean',
  'dumbbell-hang-clean-and-press',
  'dumbbell-thruster',
  'dumbbell-push-press',
  'dumbbell-shoulder-press',
  'dumbbell-bench-press',
  'dumbbell-floor-press',
  'dumbbell-plank-row',
  'dumbbell-front-squat',
  'dumbbell-walking-lunge',
  'dumbbell-step-up',
  'dumbbell-deadlift',
  'dumbbell-burpee-deadlift',
  'dumbbell-burpee-to-overhead',
  'dumbbell-farmers-carry',
  'kettlebell-rack-squat',
  'kettlebell-rack-lunge',
  'kettlebell-farmers-carry',
  'kettlebell-rack-carry',
  'handles-carry'
);
