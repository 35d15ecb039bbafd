using Progression.App.Actions;
using Progression.App.Grid;
using Progression.App.Screens;
using Progression.App.Shell;
using Progression.Core.Drafting;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Records.Cases;
using Progression.Records.Library;

namespace Progression.EndToEnd.Probe;

/// <summary>The grid screen on a case file, with files of text in place of a store: <c>saved</c> and <c>draft</c> in the present folder.</summary>
internal static class ProbeGrid
{
    public static int Run(string example)
    {
        ClinicalLibrary library = LibraryReader.Default();
        CaseFileResult read = CaseFileReader.Read(example, library, new DateOnly(2026, 6, 1));
        Case patient = read.Case ?? throw new InvalidDataException(read.Problems[0].ToString());
        PlanRevision plan = PlanDraft.Draft(patient, library).Value ?? throw new InvalidDataException("The example cannot be drafted.");
        PlanDesk desk = PlanDesk.For(patient, library, patient.Operation.Date.AddDays(16));
        string? farewell = null;
        PlanKeeper keeper = new()
        {
            Save = kept => Write("saved", kept, library),
            KeepDraft = kept => Write("draft", kept, library),
            DropDraft = () =>
            {
                File.Delete("draft");
                return null;
            },
        };
        int exitCode = TerminalSession.Run(new ScreenStack(PlanFrame.Of(GridState.Open(desk, plan), keeper, (_, told) => farewell = told)));
        Console.WriteLine(farewell ?? "nothing unsaved");
        return exitCode;
    }

    private static string? Write(string file, PlanRevision plan, ClinicalLibrary library)
    {
        File.WriteAllLines(file, plan.Cells.OrderBy(cell => cell.Key.Lane, StringComparer.Ordinal).ThenBy(cell => cell.Key.Week)
            .Select(cell => $"{cell.Key}: {CellNotation.Text(plan.LaneOf(cell.Key.Lane)!, cell.Value.Content, library)}"));
        return null;
    }
}
