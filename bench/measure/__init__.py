"""What bench/run measures, one question a module: each has `run(cairn, options)`, which prints figures and returns what
is wrong with them, a phrase each."""
