using Progression.App.Commands;

// The workbook is wired here: CliEnvironment.OfProcess() with { OpenWorkbook = ... }.
return Cli.Run(args, Console.Out, Console.Error, CliEnvironment.OfProcess());
