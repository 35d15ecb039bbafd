using Progression.App.Shell;
using Progression.EndToEnd.Probe;

if (TerminalNeeds.WhyNot() is { } reason)
{
    Console.Error.WriteLine(reason);
    return 64;
}
return args switch
{
    ["grid", string example] => ProbeGrid.Run(example),
    ["twice", string draft] => ProbeScreen.Run(draft) + ProbeScreen.Run(draft, start: 100),
    _ => ProbeScreen.Run(args[0]),
};
