using Progression.App.Commands;
using Progression.App.Screens;
using Progression.Records.Clinic;

ProcessUmask.Set(ProcessUmask.Strict);
CliEnvironment process = CliEnvironment.OfProcess() with
{
    OpenWorkbook = order => Workbook.Run(order, Console.Error),
    OpenPlain = order => Workbook.Talk(order, Console.In, Console.Out, Console.Error),
};
return Cli.Run(args, Console.Out, Console.Error, process);
