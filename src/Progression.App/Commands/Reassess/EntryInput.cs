using System.CommandLine;
using System.Text;
using Progression.Core.Entry;
using Progression.Core.People;
using Progression.Records.Caseload;
using Progression.Records.Cases;
using Progression.Records.Yaml;

namespace Progression.App.Commands.Reassess;

/// <summary>Gets the saved case and the file of a command that enters something into a case. Tells what stands in the way.</summary>
internal sealed class EntryInput(CommandOutput output, CliEnvironment environment, StorePlace stores)
{
    /// <summary>The name by which standard input is asked for.</summary>
    private const string StandardInput = "-";

    /// <summary>The words "CODE".</summary>
    public Argument<string> Code { get; } = new("code") { Description = "The code of a saved case.", HelpName = "CODE" };

    /// <summary>The option that names the file.</summary>
    public Option<string> From { get; } = new("--from") { Description = "The file to read; \"-\" reads standard input.", HelpName = "FILE", Required = true };

    /// <summary>The option that confirms what was asked back.</summary>
    public Option<bool> Confirmed { get; } = new("--confirmed") { Description = "What was asked back is right as it stands: enter it." };

    /// <summary>The day the command takes for the present one.</summary>
    public DateOnly Today => DateOnly.FromDateTime(environment.Clock.GetLocalNow().DateTime);

    /// <summary>The saved case, and where it is saved; null with the exit code after everything was told.</summary>
    public (OpenedCase? Opened, CaseBook? Book, int Code) Open(string command, ParseResult line) => Open(command, line.GetRequiredValue(Code), line);

    /// <summary>The same for a code that was typed elsewhere on the line.</summary>
    public (OpenedCase? Opened, CaseBook? Book, int Code) Open(string command, string typed, ParseResult line)
    {
        if (CaseCode.Parse(typed) is not { } code)
        {
            output.Problems(command, [new Problem("code", "This is not the code of a case.", CaseCode.Allowed, Found.Of(typed))]);
            return (null, null, ExitCode.Usage);
        }

        string folder = stores.Folder(line);
        CaseBook? book = Directory.Exists(folder) ? stores.Open(folder) : null;
        OpenedCase? opened = book?.Open(code);
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
            output.Message($"progression {command}: there is no case {code} in the store {Found.Of(folder)}.");
        }

        return (opened, book, opened is null ? ExitCode.NoInput : ExitCode.Good);
    }

    /// <summary>The file; null after it was told that there is none.</summary>
    public WrittenFile? File(string command, ParseResult line)
    {
        string path = line.GetRequiredValue(From);
        if (path == StandardInput)
        {
            return WrittenFile.Of("standard input", Encoding.UTF8.GetBytes(environment.Input.ReadToEnd()));
        }

        if (System.IO.File.Exists(path))
        {
            return WrittenFile.At(path);
        }

        output.Message($"progression {command}: \"{Found.Of(path)}\" {(Directory.Exists(path) ? "is a folder, not a file" : "is not there")}.");
        return null;
    }

    /// <summary>Tells what is wrong and what is asked back; whether the file may be entered.</summary>
    public bool MayEnter(string command, ParseResult line, IReadOnlyList<FileProblem> problems, IReadOnlyList<FileProblem> queries)
    {
        foreach (FileProblem told in problems.Concat(queries))
        {
            output.Message(told.ToString());
        }

        bool open = queries.Count > 0 && !line.GetValue(Confirmed);
        if (problems.Count == 0 && open)
        {
            output.Message($"progression {command}: nothing was entered. Mend the file, or say {Confirmed.Name} where it is right as it stands.");
        }

        return problems.Count == 0 && !open;
    }
}
