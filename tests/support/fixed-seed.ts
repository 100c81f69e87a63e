import fc from 'fast-check';

// Every run tries the same examples, so that a red run can be repeated; SEED=n tries others.
fc.configureGlobal({
  ...fc.readConfigureGlobal(),
  seed: Number(process.env.SEED ?? 20_310_402),
});
