using Proveout.Cli;

return await CommandRun.OfAsync(args, Terminal.OfProcess());
