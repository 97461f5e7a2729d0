import fc from 'fast-check';

// The same cases on every run, so that a failure means a change; UPSTAND_SEED=N explores others.
fc.configureGlobal({ seed: Number(process.env.UPSTAND_SEED) || 1964 });
