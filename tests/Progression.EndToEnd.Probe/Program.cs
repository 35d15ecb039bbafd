using Progression.App.Shell;
using Progression.EndToEnd.Probe;

if (TerminalNeeds.WhyNot() is { } reason)
{
    Console.Error.WriteLine(reason);
    return 64;
}
string draft = args.Length > 0 ? args[0] : "probe.draft";
(Tally last, int exitCode) = TerminalSession.Run(
    ProbeScreen.Definition,
    new Tally(0, "ready", null),
    (tally, effect) =>
    {
        if (effect is Blow { OnOtherThread: true })
        {
            new Thread(() => throw new InvalidOperationException("blown on another thread")).Start();
            return tally;
        }
        throw new InvalidOperationException("blown on the screen's thread");
    },
    tally => File.WriteAllText(draft, $"kept {tally.Count}\n"));
Console.WriteLine($"left at {last.Count}");
return exitCode;
