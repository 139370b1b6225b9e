import fc from 'fast-check';

// The same random cases in every run of all checks, so that a failure can be repeated; another set each time with COUPLET_FULL=1.
if (!process.env.COUPLET_FULL) fc.configureGlobal({ seed: 20_261_125 });
