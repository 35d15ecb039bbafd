using System.CommandLine;
using Progression.App.Commands.Reassess;
using Progression.App.Stores;
using Progression.Core.Clinic;
using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Exchange.Import;
using Progression.Records.Audit;
using Progression.Records.Caseload;
using Progression.Records.Storage;

namespace Progression.App.Commands.Exchange;

/// <summary>What every command has in common that puts a file of another program into a saved case: the file, the case, the preview, and the save.</summary>
internal sealed class ImportDesk(CommandOutput output, CliEnvironment environment, StorePlace stores)
{
    private const string StandardInput = "-";

    private readonly EntryInput _input = new(output, environment, stores);

    /// <summary>The file.</summary>
    public Argument<string> File { get; } = new("file") { Description = "The file to read.", HelpName = "FILE" };

    /// <summary>The case.</summary>
    public Option<string> Case { get; } = new("--case") { Description = "The code of the saved case.", HelpName = "CODE", Required = true };

    /// <summary>Says that it is to be done and not only shown.</summary>
    public Option<bool> Yes { get; } = new("--yes") { Description = "Import it. Left out: the preview is shown and nothing is changed." };

    /// <summary>Says that what was asked back is right.</summary>
    public Option<bool> Confirmed { get; } = new("--confirmed") { Description = "What was asked back is right as it stands." };

    /// <summary>The bytes of the file; null with the exit code after it was told what stands in the way.</summary>
    public (byte[]? Bytes, int Code) Bytes(string command, ParseResult line)
    {
        string path = line.GetRequiredValue(File);
        if (path == StandardInput || !System.IO.File.Exists(path))
        {
            string kind = path == StandardInput ? "is standard input, which may have lost letters on its way here; name a file" : Directory.Exists(path) ? "is a folder, not a file" : "is not there";
            output.Message($"progression {command}: \"{Found.Of(path)}\" {kind}.");
            return (null, ExitCode.NoInput);
        }

        Entered<byte[]> read = ImportFile.Read(path);
        output.Problems(command, read.Problems);
        return (read.Value, ExitCode.BadData);
    }

    /// <summary>The saved case, held against; null with the exit code after everything was told.</summary>
    public (ImportAtHand? At, int Code) Open(string command, ClinicalLibrary library, ParseResult line)
    {
        (OpenedCase? opened, _, int code) = _input.Open(command, line.GetRequiredValue(Case), line);
        return opened is null ? (null, code) : (new ImportAtHand(opened, stores.Records(stores.Folder(line)), new ImportGround(opened.Case, library, _input.Today) { Plan = opened.Plan }), ExitCode.Good);
    }

    /// <summary>Shows what the file comes to, and saves it where that was asked for.</summary>
    /// <param name="command">The words of the command.</param>
    /// <param name="at">The case.</param>
    /// <param name="result">What the file comes to.</param>
    /// <param name="of">The command line, and what is written down: "csv measures".</param>
    public int Finish(string command, ImportAtHand at, ImportResult result, (ParseResult Line, string What) of)
    {
        output.Data(string.Join('\n', ImportPreview.Lines(result, at.Opened.Case.Code.Text)));
        if (!result.IsGood)
        {
            return result.Problems.Length > 0 ? ExitCode.BadData : ExitCode.Good;
        }

        if (!of.Line.GetValue(Yes))
        {
            output.Message($"progression {command}: nothing was changed; {Yes.Name} imports it.");
            return ExitCode.Good;
        }

        if (result.Queries.Length > 0 && !of.Line.GetValue(Confirmed))
        {
            output.Message($"progression {command}: nothing was changed. Mend the file, or say {Confirmed.Name} where it is right as it stands.");
            return ExitCode.BadData;
        }

        return Save(command, at, result, of.What);
    }

    private int Save(string command, ImportAtHand at, ImportResult result, string what)
    {
        SaveResult saved = result.Plan is { } plan ? at.Records.Book.Save(plan, at.Opened.PlanStamp?.Reference) : at.Records.Book.Save(result.Case!, at.Opened);
        if (saved is SaveResult.NotSaved refused)
        {
            output.Message($"progression {command}: not saved. {refused.Why}");
            return StorePlace.CodeOf(refused.Kind);
        }

        RevisionStamp stamp = ((SaveResult.Saved)saved).Stamps[0];
        string? unnoted = at.Records.Trail.Note(new AuditNote(AuditAct.Imported, at.Opened.Case.Code.Text, stamp.Kind, stamp.Reference, FormattableString.Invariant($"{what}: {result.Coming}")));
        output.Message(result.Plan is null
            ? $"Saved {at.Opened.Case.Code}, case revision {stamp.Revision}. The plan stays as it is; \"progression reassess\" proposes changes."
            : $"Saved {at.Opened.Case.Code}, plan revision {stamp.Revision}: {result.Coming} cells set by hand. \"progression check\" tells its findings.");
        if (unnoted is not null)
        {
            output.Message($"progression {command}: {unnoted}");
        }

        return ExitCode.Good;
    }

    /// <summary>Whether the person may not change cases; told, and written down as refused.</summary>
    public bool IsRefused(string command, ImportAtHand at)
    {
        string? why = at.Records.Trail.Refusal(ClinicAct.ChangeCase, at.Opened.Case.Code.Text);
        if (why is not null)
        {
            output.Message($"progression {command}: {why}");
        }

        return why is not null;
    }
}

/// <summary>A saved case that something is imported into.</summary>
/// <param name="Opened">The case as it stands.</param>
/// <param name="Records">Where it is saved.</param>
/// <param name="Ground">What the file is held against.</param>
internal sealed record ImportAtHand(OpenedCase Opened, OpenRecords Records, ImportGround Ground);
