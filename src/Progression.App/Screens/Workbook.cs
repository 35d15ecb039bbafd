using Progression.App.Actions;
using Progression.App.Plain;
using Progression.App.Shell;
using Progression.App.Stores;
using Progression.Core.Clinic;
using Progression.Core.Entry;

namespace Progression.App.Screens;

/// <summary>The workbook on this terminal: the list of cases, the grid of the one that is opened and what is opened from there, until the person leaves.</summary>
public static class Workbook
{
    private const int NotThere = 66; // As the commands have it: a case that was named is not there.

    /// <summary>Shows it until it is left.</summary>
    /// <param name="order">What to open.</param>
    /// <param name="messages">Takes what is told after the last screen is gone.</param>
    /// <returns>An exit code: 0 unless a signal ended the session or what was asked for is not there (66).</returns>
    public static int Run(WorkbookOrder order, TextWriter messages)
    {
        ArgumentNullException.ThrowIfNull(order);
        ArgumentNullException.ThrowIfNull(messages);
        return Run(order, messages, screens =>
        {
            WorkWatch watch = new();
            order.Shown(watch);
            return TerminalSession.Run(screens, order.Settings is { } kept ? () => kept.Current : null, messages, watch);
        });
    }

    /// <summary>Runs the workbook in line mode.</summary>
    /// <param name="order">What to open.</param>
    /// <param name="input">What the person types.</param>
    /// <param name="output">What is said.</param>
    /// <param name="messages">Takes what is told once the last screen is gone.</param>
    /// <returns>0, 1 when the input ended with unsaved work, 66 when a case is not there.</returns>
    public static int Talk(WorkbookOrder order, TextReader input, TextWriter output, TextWriter messages)
    {
        ArgumentNullException.ThrowIfNull(order);
        ArgumentNullException.ThrowIfNull(messages);
        bool sevenBit = TerminalLook.From(Environment.GetEnvironmentVariable, order.Settings?.Current).SevenBitOnly;
        return Run(order, messages, screens => PlainSession.Run(screens, input, output, sevenBit));
    }

    private static int Run(WorkbookOrder order, TextWriter messages, Func<ScreenStack, int> run)
    {
        Farewells farewells = new();
        try
        {
            if (Screens(order, farewells, messages) is not { } screens)
            {
                return NotThere;
            }

            return run(screens);
        }
        finally
        {
            farewells.Write(messages);
        }
    }

    private static ScreenStack? Screens(WorkbookOrder order, Farewells farewells, TextWriter messages)
    {
        ListFrame list = new(order, farewells);
        (Frame? plan, string? why) = order.Code is { } code ? list.Plan(code) : (null, null);
        if (order.OnlyThat)
        {
            if (plan is null)
            {
                messages.WriteLine(SafeText.OneLine(why ?? ""));
            }

            return plan is null ? null : new ScreenStack(plan);
        }

        Frame below = list.Open(why ?? "", order.Code);
        return plan is not null ? new ScreenStack(below, plan)
            : order.Store.Book.Person is { } person && person.Is(ClinicRole.Supervisor) && !person.Is(ClinicRole.Therapist) ? new ScreenStack(below, list.Queue())
            : new ScreenStack(below);
    }
}
