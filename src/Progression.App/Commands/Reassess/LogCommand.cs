using System.CommandLine;
using System.Text.Json.Nodes;
using Progression.Core.Library;
using Progression.Records.Caseload;
using Progression.Records.Cases;

namespace Progression.App.Commands.Reassess;

/// <summary><c>progression log</c>: sessions from a file, put into a saved case.</summary>
internal sealed class LogCommand(CommandOutput output, CliEnvironment environment, StorePlace stores, LibraryPlace libraries)
{
    private readonly EntryInput _input = new(output, environment, stores);
    private readonly Option<bool> _json = new("--json") { Description = "Print what was logged as JSON." };

    internal Command Build()
    {
        ExampledCommand command = new("log", "Logs sessions of a saved case from a file.", $"""
            Sessions of the file are added; under "complete", an earlier session gets what became known later. The plan stays as it is.

            Examples:
              progression example session > session.yaml
              progression log EXAMPLE-07 --from session.yaml
              progression log EXAMPLE-07 --from - --json < session.yaml

            JSON: schema "log/1" with code, revision, logged and weeks (planned and done).
            {ExitCode.Help}
            """)
        { _input.Code, _input.From, _input.Confirmed, _json, stores.Option, libraries.Option };
        command.SetAction(Run);
        return command;
    }

    private int Run(ParseResult line)
    {
        (ClinicalLibrary? library, int code) = libraries.Read("log", line);
        if (library is null)
        {
            return code;
        }

        (OpenedCase? opened, CaseBook? book, code) = _input.Open("log", line);
        if (opened is null || _input.File("log", line) is not { } file)
        {
            return opened is null ? code : ExitCode.NoInput;
        }

        SessionFileResult read = SessionFileReader.Read(file, opened.Case, library, _input.Today);
        if (!_input.MayEnter("log", line, read.Problems, read.Queries))
        {
            return ExitCode.BadData;
        }

        return book!.Save(read.Case!, opened) switch
        {
            SaveResult.Saved saved => Tell(line, new LoggedWork(opened with { Case = read.Case! }, read.Logged, library), saved.Case.Revision),
            SaveResult.NotSaved refused => Refused(refused),
            _ => throw new InvalidOperationException("A save has two outcomes."),
        };
    }

    private int Tell(ParseResult line, LoggedWork work, int revision)
    {
        if (line.GetValue(_json))
        {
            output.Json(new JsonObject
            {
                ["schema"] = "log/1",
                ["code"] = work.Of.Case.Code.Text,
                ["revision"] = revision,
                ["logged"] = new JsonArray([.. work.Logged.Select(CaseJson.Node)]),
                ["weeks"] = new JsonArray([.. work.Weeks.Select(LoggedWork.Node)]),
            });
        }
        else
        {
            output.Data(work.Text);
            output.Message($"Saved {work.Of.Case.Code}, case revision {revision}.");
        }

        return ExitCode.Good;
    }

    private int Refused(SaveResult.NotSaved refused)
    {
        output.Message($"progression log: not saved. {refused.Why}");
        return StorePlace.CodeOf(refused.Kind);
    }
}
