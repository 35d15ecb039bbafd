using System.CommandLine;
using Progression.App.Commands.Plans;
using Progression.App.Grid;
using Progression.App.Stores;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Reviews;
using Progression.Records.Caseload;
using Progression.Records.Storage;

namespace Progression.App.Commands.Demo;

/// <summary><c>progression demo</c>: an invented caseload in a store of its own, in the workbook or printed.</summary>
internal sealed class DemoCommand(CommandOutput output, StorePlace stores, LibraryPlace libraries, WorkbookDoor door)
{
    private readonly Option<string> _store = new("--store")
    {
        Description = "The demo's own folder, empty or new. Default: progression-demo in the folder for a person's data.",
        HelpName = "FOLDER",
    };

    private readonly Option<bool> _fresh = new("--fresh") { Description = "Start over: what was changed in the demo is dropped. A folder that is not a demo's is never touched." };

    internal Command Build()
    {
        ExampledCommand command = new("demo", "Opens the demo scenario: invented cases in a store of their own.", $"""
            On a terminal the workbook opens on the first plan; otherwise the caseload and that plan are printed.
            Asked for again on the same day, the demo is as it was left.

            Examples:
              progression demo
              progression demo --fresh
              progression check TERN-11 --store FOLDER

            {ExitCode.Help}
            """)
        { _store, _fresh, libraries.Option };
        command.SetAction(Run);
        return command;
    }

    private int Run(ParseResult line)
    {
        (ClinicalLibrary? library, int code) = libraries.Read("demo", line);
        if (library is null)
        {
            return code;
        }

        OpenStore store = door.Store(line.GetValue(_store) ?? stores.DemoFolder, library, demo: true);
        DemoAnswer answer = DemoStore.Prepare(store, line.GetValue(_fresh));
        if (answer.Told.Length > 0)
        {
            output.Message($"progression demo: {answer.Told}");
        }

        return !answer.Ready ? ExitCode.CannotCreate : door.IsThere ? door.Open(store, DemoStore.Showcase) : Print(store);
    }

    private int Print(OpenStore store)
    {
        List<PlanAtHand> plans = [.. store.Book.List(new CaseQuery { Take = int.MaxValue }).Rows.Select(row => AtHand(store, row)).OfType<PlanAtHand>()];
        output.Data($"Demo scenario: invented cases of a knee clinic that does not exist, in {store.Folder}\n\n{DemoText.Of(plans, store.Today)}");
        if (plans.Find(at => at.Case.Code == DemoStore.Showcase) is { } first)
        {
            output.Data($"\n{PlanText.Of(PlanDesk.For(first.Case, first.Library, store.Today), first.Plan, PlanText.UsualWidth, first.Mark)}");
        }

        door.TellNotices();
        return ExitCode.Good;
    }

    private static PlanAtHand? AtHand(OpenStore store, CaseRow row) =>
        CaseCode.Parse(row.CaseCode) is { } code && store.Book.Again(code) is OpenedCase { Plan: PlanRevision plan } opened
            ? new PlanAtHand(opened.Case, plan, store.Library) { Standing = opened.Standing ?? ReviewStanding.NotSaved }
            : null;
}
