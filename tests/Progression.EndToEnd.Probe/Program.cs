using Progression.App.Shell;
using Progression.EndToEnd.Probe;

if (TerminalNeeds.WhyNot() is { } reason)
{
    Console.Error.WriteLine(reason);
    return 64;
}
return args is ["grid", string example] ? ProbeGrid.Run(example) : ProbeScreen.Run(args[0]);
