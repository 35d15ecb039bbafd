using System.CommandLine;
using Progression.Core.Clinic;
using Progression.Core.Entry;

namespace Progression.App.Commands.Records;

/// <summary>Runs the commands on the records as a whole: asks whether the person may, lets the work be broken off, writes down what was done.</summary>
internal sealed class RecordsDesk(CommandOutput output, CliEnvironment environment, StorePlace stores)
{
    private readonly Option<bool> _json = new("--json") { Description = "Print the answer as JSON." };

    /// <summary>A command of the family, with the options all of them have.</summary>
    /// <param name="name">Its word and its description.</param>
    /// <param name="closing">Examples and notes.</param>
    /// <param name="act">What the person must be allowed.</param>
    /// <param name="work">Does it.</param>
    internal ExampledCommand Command((string Word, string Description) name, string closing, ClinicAct act, Func<ParseResult, RecordsAtHand, RecordsAnswer> work)
    {
        ExampledCommand command = new(name.Word, name.Description, $"""
            {closing}

            JSON: schema "records/1". Exit code 0 when it is done and nothing is damaged, 65 when something is damaged or refused, 66 when a folder or file is
            not there, 75 when the records are in use, 77 when the person may not, 130 when it was broken off; nothing is changed then.
            """)
        { stores.Option, _json };
        command.SetAction(line => Run(line, name.Word, act, work));
        return command;
    }

    private int Run(ParseResult line, string word, ClinicAct act, Func<ParseResult, RecordsAtHand, RecordsAnswer> work)
    {
        string folder = Path.GetFullPath(stores.Folder(line));
        if (!Directory.Exists(folder) && act is not (ClinicAct.RestoreRecords or ClinicAct.ImportRecords))
        {
            return Refuse(word, $"There are no records in {folder}.", ExitCode.NoInput);
        }

        using BreakOff breaking = new(new ProgressLines(output, environment.Clock));
        try
        {
            RecordsAtHand at = stores.AtHand(folder, breaking);
            if (at.Trail.Refusal(act, null) is { } why)
            {
                return Refuse(word, why, ExitCode.NotPermitted);
            }

            RecordsAnswer answer = work(line, at);
            Tell(line, answer, at.Unnoted is { } unnoted ? $"progression records {word}: {unnoted}" : null);
            return answer.IsGood ? ExitCode.Good : ExitCode.BadData;
        }
        catch (OperationCanceledException)
        {
            return Refuse(word, "It was broken off, and no record was changed.", ExitCode.BrokenOff);
        }
        catch (FileNotFoundException missing)
        {
            return Refuse(word, missing.Message, ExitCode.NoInput);
        }
    }

    private void Tell(ParseResult line, RecordsAnswer answer, string? unnoted)
    {
        if (line.GetValue(_json))
        {
            output.Json(answer.Json());
        }
        else
        {
            output.Data(answer.Text());
        }

        if (unnoted is not null)
        {
            output.Message(unnoted);
        }
    }

    private int Refuse(string word, string why, int code)
    {
        output.Message($"progression records {word}: {SafeText.OneLine(why)}");
        return code;
    }
}
