using System.Collections.Immutable;
using Progression.App.Actions;
using Progression.App.Imports;
using Progression.App.Papers;
using Progression.App.Stores;
using Progression.Core.Clinic;
using Progression.Core.Entry;
using Progression.Core.Plans;
using Progression.Exchange.Csv;
using Progression.Exchange.Fhir;
using Progression.Exchange.Import;
using Progression.Records.Audit;
using Progression.Records.Codes;
using Progression.Records.Storage;

namespace Progression.App.Screens;

/// <summary>Opens the import of a file into a case: reads it, shows it, brings all of it in or nothing.</summary>
/// <param name="room">Keeps the case.</param>
/// <param name="store">The store.</param>
internal sealed class ImportDoor(StoredPlan room, OpenStore store)
{
    private readonly PaperPlace _place = PaperPlace.Of(store.Folder, store.Clinic);

    /// <summary>The screen, at the name of the file.</summary>
    /// <param name="plan">The plan as it stands in the grid.</param>
    public Frame Open(PlanRevision plan) => new Frame<ImportState>(ImportScreen.Definition, new ImportState { Patient = room.Case, Folder = _place.Folder ?? "" })
    {
        Perform = (state, effect) => effect switch
        {
            ReadFile => Turn.Stay(Read(state, plan)),
            BringIn => BroughtIn(state),
            _ => Turn.Stay(state),
        },
    };

    private ImportState Read(ImportState state, PlanRevision plan)
    {
        if (store.Book.Trail.Refusal(ClinicAct.ChangeCase, room.Case.Code.Text) is { } refused)
        {
            return state with { Status = refused };
        }

        (string? path, string? problem) = _place.Find(state.Name.Text.Trim());
        Entered<byte[]>? bytes = path is null ? null : ImportFile.Read(path);
        if (bytes?.Value is not { } file)
        {
            return state with { Status = problem ?? bytes!.Problems[0].ToString() };
        }

        ImportGround ground = new(room.Case, store.Library, store.Today) { Plan = plan };
        (ImportResult result, ImmutableArray<string> aside) = Understood(state.Kind, file, ground);
        return state with
        {
            Mode = ImportMode.Preview,
            Result = result,
            Preview = [.. ImportPreview.Lines(result, room.Case.Code.Text), .. aside],
            IsConfirmed = false,
            Scroll = 0,
            Status = "",
        };
    }

    private (ImportResult Result, ImmutableArray<string> Aside) Understood(ImportKind kind, byte[] file, ImportGround ground)
    {
        if (kind == ImportKind.Fhir)
        {
            FhirImport read = FhirImport.Of(file, ground, StandardCodesReader.Shipped(), null);
            return (read.Result, read.Left.IsEmpty ? [] : [$"Left aside: {string.Join(", ", read.Left)}."]);
        }

        CsvContent content = kind switch { ImportKind.Measures => CsvContent.Measures, ImportKind.Sessions => CsvContent.Sessions, _ => CsvContent.Plan };
        CsvChoices Remembered(ImmutableArray<string> heads) => store.Columns is { } columns ? CsvChoices.None.Over(new RememberedColumns(columns).Of(content, heads)) : CsvChoices.None;
        return (CsvImport.Read(file, content, ground, Remembered).Result, []);
    }

    private Turn<ImportState> BroughtIn(ImportState state)
    {
        ImportResult result = state.Result!;
        string what = FormattableString.Invariant($"{ImportWords.Noted(state.Kind)}: {result.Coming}");
        if (result.Plan is { } plan)
        {
            // Changes to the grid like any others: looked at with their findings, then saved or taken back.
            return Turn.Leave(state, new CellsBroughtIn(plan, $"{result.Coming} cells came in, set by hand. Ctrl+S saves them, u takes them back."));
        }

        if (room.SaveCase(result.Case!) is { } problem)
        {
            return Turn.Stay(state with { Status = $"Nothing came in: {problem}" });
        }

        string? unnoted = store.Book.Trail.Note(new AuditNote(AuditAct.Imported, room.Case.Code.Text, RecordKind.Case, room.CaseRevision, what));
        return Turn.Leave(state, new CaseSaved(room.Case, null, $"{result.Coming} came in and are saved.{room.Joined} a goes on to what they change. {unnoted}".TrimEnd()));
    }
}
