using System.Globalization;
using Progression.App.Shell;
using Progression.Benchmarks;
using Progression.EndToEnd.Probe;

if (args is ["caseload", string cases, string folder])
{
    CaseloadMaker.Make(int.Parse(cases, CultureInfo.InvariantCulture), folder, Console.Out);
    return 0;
}

if (args is ["hostile", string records])
{
    HostileStore.Make(records);
    return 0;
}

if (TerminalNeeds.WhyNot() is { } reason)
{
    Console.Error.WriteLine(reason);
    return 64;
}
return args switch
{
    ["quick", string draft] => ProbeScreen.Run(draft, quick: true),
    ["grid", string example] => ProbeGrid.Run(example),
    ["twice", string draft] => ProbeScreen.Run(draft) + ProbeScreen.Run(draft, start: 100),
    _ => ProbeScreen.Run(args[0]),
};
