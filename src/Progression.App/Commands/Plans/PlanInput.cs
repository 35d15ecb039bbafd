using System.Collections.Immutable;
using System.CommandLine;
using Progression.App.Grid;
using Progression.Core.Drafting;
using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Reviews;
using Progression.Records.Caseload;
using Progression.Records.Cases;

namespace Progression.App.Commands.Plans;

/// <summary>A case with its plan and library, however a command was told which.</summary>
internal sealed record PlanAtHand(Case Case, PlanRevision Plan, ClinicalLibrary Library)
{
    /// <summary>Whether it is signed; a plan that was not saved cannot be.</summary>
    public ReviewStanding Standing { get; init; } = ReviewStanding.NotSaved;

    /// <summary>Hash of the last entry of the records it was taken from; null for a plan that is in none.</summary>
    public string? ChainHead { get; init; }

    /// <summary>What stands on a print of it.</summary>
    public ImmutableArray<string> Mark => PrintMark.Of(Standing, ChainHead);
}

/// <summary>Gets the plan a command is about: drafted from a case file, or taken from the store by its code. Tells what stands in the way.</summary>
internal sealed class PlanInput(CommandOutput output, CliEnvironment environment, StorePlace stores, LibraryPlace libraries)
{
    /// <summary>The words "FILE|CODE".</summary>
    public static Argument<string> FileOrCode() => new("file-or-code") { Description = "A case file, or the code of a saved case.", HelpName = "FILE|CODE" };

    /// <summary>The day the command takes for the present one.</summary>
    public DateOnly Today => DateOnly.FromDateTime(environment.Clock.GetLocalNow().DateTime);

    /// <summary>What lies beside a plan when it is printed.</summary>
    public PlanDesk Desk(PlanAtHand at) => PlanDesk.For(at.Case, at.Library, Today);

    /// <summary>The plan of a file or a saved case; null with the exit code after everything was told.</summary>
    public (PlanAtHand? At, int Code) Take(string name, string command, ParseResult line)
    {
        (ClinicalLibrary? library, int code) = libraries.Read(command, line);
        if (library is null)
        {
            return (null, code);
        }

        return LooksLikeFile(name) || CaseCode.Parse(name) is not { } saved
            ? FromFile(name, command, library, null)
            : FromStore(saved, command, library, stores.Folder(line));
    }

    /// <summary>The case of a file or a saved case with the library, whether it has a plan or not; null with the exit code after everything was told.</summary>
    public ((Case Case, ClinicalLibrary Library)? At, int Code) TakeCase(string name, string command, ParseResult line)
    {
        (ClinicalLibrary? library, int code) = libraries.Read(command, line);
        if (library is null)
        {
            return (null, code);
        }

        (Case? patient, code) = LooksLikeFile(name) || CaseCode.Parse(name) is not { } saved
            ? ReadCase(name, command, library)
            : (Opened(saved, command, stores.Folder(line))?.Case, ExitCode.NoInput);
        return patient is null ? (null, code) : ((patient, library), ExitCode.Good);
    }

    /// <summary>The plan drafted from a case file; null with the exit code after everything was told.</summary>
    public (PlanAtHand? At, int Code) FromFile(string path, string command, ClinicalLibrary library, DraftOrder? order)
    {
        (Case? patient, int code) = ReadCase(path, command, library);
        if (patient is null)
        {
            return (null, code);
        }

        Entered<PlanRevision> drafted = PlanDraft.Draft(patient, library, order);
        if (drafted.Value is null)
        {
            output.Problems(command, drafted.Problems);
            return (null, order is { Weeks: null, Regimen: null } or null ? ExitCode.BadData : ExitCode.Usage);
        }

        return (new PlanAtHand(patient, drafted.Value, library), ExitCode.Good);
    }

    private (Case?, int) ReadCase(string path, string command, ClinicalLibrary library)
    {
        if (Directory.Exists(path) || !File.Exists(path))
        {
            string kind = Directory.Exists(path) ? "is a folder, not a case file" : "is not there: neither a file nor the code of a saved case";
            output.Message($"progression {command}: \"{Found.Of(path)}\" {kind}.");
            return (null, ExitCode.NoInput);
        }

        CaseFileResult read = CaseFileReader.Read(path, library, Today);
        foreach (object told in read.Problems.Concat(read.Queries))
        {
            output.Message(told.ToString()!);
        }

        return (read.Case, ExitCode.BadData);
    }

    /// <summary>The plan of a saved case; null with the exit code after everything was told.</summary>
    public (PlanAtHand? At, int Code) FromStore(CaseCode code, string command, ClinicalLibrary library, string folder)
    {
        OpenedCase? opened = Opened(code, command, folder);
        if (opened?.Plan is { } plan)
        {
            return (new PlanAtHand(opened.Case, plan, library) { Standing = opened.Standing ?? ReviewStanding.NotSaved, ChainHead = stores.Open(folder).ChainHead() }, ExitCode.Good);
        }

        bool damaged = opened is { Damage.Count: > 0 };
        if (opened is not null)
        {
            output.Message(damaged ? $"progression {command}: no plan of {code} can be read; one may have been saved." : $"progression {command}: the case {code} has no plan yet.");
        }

        return (null, damaged ? ExitCode.BadData : ExitCode.NoInput);
    }

    /// <summary>A saved case, its damage told; null after it was told that there is none.</summary>
    private OpenedCase? Opened(CaseCode code, string command, string folder)
    {
        OpenedCase? opened = Directory.Exists(folder) ? stores.Open(folder).Open(code) : null;
        if (opened?.Unnoted is { } unnoted)
        {
            output.Message($"progression {command}: {unnoted}");
        }

        foreach (string damage in opened?.Damage ?? [])
        {
            output.Message($"progression {command}: the records are damaged: {damage}");
        }

        if (opened is null)
        {
            output.Message($"progression {command}: there is no case {code} in the store {Found.Of(folder)}, and no file of that name.");
        }

        return opened;
    }

    private static bool LooksLikeFile(string name) => File.Exists(name) || name.Contains('/', StringComparison.Ordinal) || name.Contains('.', StringComparison.Ordinal);
}
