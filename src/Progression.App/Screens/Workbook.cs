using System.Collections.Immutable;
using Progression.App.Shell;
using Progression.App.Start;
using Progression.App.Stores;
using Progression.Core.Drafting;
using Progression.Core.Entry;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Records.Caseload;
using Progression.Records.Storage;

namespace Progression.App.Screens;

/// <summary>The workbook on this terminal: the list of cases, and the grid of the one that is opened, until the person leaves.</summary>
public sealed class Workbook
{
    private const int NotThere = 66; // As the commands have it: a case that was named is not there.
    private readonly WorkbookOrder _order;
    private readonly SortedDictionary<string, string> _farewells;

    private Workbook(WorkbookOrder order, SortedDictionary<string, string> farewells) => (_order, _farewells) = (order, farewells);

    /// <summary>Shows it until it is left.</summary>
    /// <param name="order">What to open.</param>
    /// <param name="messages">Takes what is told after the last screen is gone.</param>
    /// <returns>An exit code: 0 unless a signal ended the session or what was asked for is not there (66).</returns>
    public static int Run(WorkbookOrder order, TextWriter messages)
    {
        ArgumentNullException.ThrowIfNull(order);
        ArgumentNullException.ThrowIfNull(messages);
        SortedDictionary<string, string> farewells = new(StringComparer.Ordinal);
        try
        {
            return new Workbook(order, farewells).Run();
        }
        finally
        {
            foreach (string farewell in farewells.Values)
            {
                messages.WriteLine(SafeText.OneLine(farewell));
            }
        }
    }

    private int Run()
    {
        StartState state = List("");
        if (_order.Code is { } first)
        {
            (string? told, int code) = Open(first);
            if (code != 0 || _order.OnlyThat)
            {
                return code;
            }

            state = List(told ?? "", first);
        }

        while (true)
        {
            (state, int code) = TerminalSession.Run(StartScreen.Definition, state with { Wish = null }, (same, _) => same, _ => { });
            if (code != 0 || state.Wish is not { } wish)
            {
                return code;
            }

            (state, code) = Fulfil(state, wish);
            if (code != 0)
            {
                return code;
            }
        }
    }

    /// <summary>Does what the person left the list for; a store that cannot do it now is told on the list, and nothing is lost.</summary>
    private (StartState, int) Fulfil(StartState state, StartWish wish)
    {
        try
        {
            return wish switch
            {
                StartWish.OpenPlan open => Back(Open(open.Code), open.Code),
                StartWish.MakeCase make => Make(state, make.Case),
                _ => Demo(),
            };
        }
        catch (Exception fault) when (fault is StoreException or FormatException or IOException or UnauthorizedAccessException)
        {
            return (state with { Status = fault.Message }, 0);
        }
    }

    private (string? Told, int Code) Open(CaseCode code)
    {
        (OpenedPlan? plan, string? why) = OpenedPlan.Of(_order.Store, code);
        (string? told, int exitCode) = plan is null ? (why, _order.OnlyThat ? NotThere : 0) : PlanWorkbook.Run(plan.Start, plan.Keeper);
        _farewells.Remove(code.Text);
        if (told is not null)
        {
            _farewells[code.Text] = told;
        }

        return (told, exitCode);
    }

    private (StartState, int) Make(StartState state, Case patient)
    {
        Entered<PlanRevision> drafted = PlanDraft.Draft(patient, _order.Store.Library);
        if (drafted.Value is not { } plan)
        {
            return (state with { Status = drafted.Problems[0].ToString() }, 0);
        }

        return _order.Store.Book.Save(patient, plan, null) is SaveResult.NotSaved refused
            ? (state with { Status = $"Not saved: {refused.Why}" }, 0)
            : Back(Open(patient.Code), patient.Code);
    }

    private (StartState, int) Demo()
    {
        OpenStore demo = _order.Demo();
        DemoAnswer answer = DemoStore.Prepare(demo, fresh: false);
        int code = answer.Ready ? new Workbook(_order with { Store = demo, Code = DemoStore.Showcase, OnlyThat = false }, _farewells).Run() : 0;
        return (List(answer.Told), code);
    }

    private (StartState, int) Back((string? Told, int Code) left, CaseCode code) => (left.Code == 0 ? List(left.Told ?? "", code) : List(""), left.Code);

    /// <summary>The list as it is now, the cursor on a case where it is still there.</summary>
    private StartState List(string status, CaseCode? at = null)
    {
        OpenStore store = _order.Store;
        IEnumerable<CaseRow> rows = Directory.Exists(store.Folder) ? store.Book.List(new CaseQuery { Take = int.MaxValue }).Rows : [];
        ImmutableArray<CaseLine> lines = [.. rows.Select(row => CaseLine.Of(row, store.Drafts)).OfType<CaseLine>()];
        StartState list = new()
        {
            Folder = store.Folder,
            IsDemo = store.IsDemo,
            Now = store.Clock.GetUtcNow(),
            Today = store.Today,
            Cases = lines,
        };
        return list.To(Math.Max(0, lines.ToList().FindIndex(line => line.Code == at))) with { Status = status };
    }
}
