using Progression.App.Commands;
using Progression.App.Screens;

CliEnvironment process = CliEnvironment.OfProcess() with { OpenWorkbook = order => Workbook.Run(order, Console.Error) };
return Cli.Run(args, Console.Out, Console.Error, process);
