using System.CommandLine;
using Progression.App.Reviews;
using Progression.Core.Entry;
using Progression.Core.People;
using Progression.Records.Caseload;

namespace Progression.App.Commands.Reviews;

/// <summary><c>progression reviews</c>: the reviews that wait, or all that was said and signed about one plan. Nothing is signed by a command: a plan is signed where it is read.</summary>
internal sealed class ReviewsCommand(CommandOutput output, CliEnvironment environment, StorePlace stores)
{
    private readonly Argument<string?> _code = new("code") { Description = "The code of a saved case; without one, the queue.", HelpName = "CODE", Arity = ArgumentArity.ZeroOrOne };
    private readonly Option<bool> _json = new("--json") { Description = "Print the answer as JSON." };

    internal Command Build()
    {
        ExampledCommand command = new("reviews", "Lists the reviews that wait, or tells where the review of a plan stands.", $"""
            Plans are asked for, commented, returned and signed in the workbook or in line mode, where they can be read.

            Examples:
              progression reviews
              progression reviews EXAMPLE-07 --json

            JSON: schema "reviews/1" with waiting, or "review-of/1" with code, signature and acts.
            {ExitCode.Help}
            """)
        { _code, _json, stores.Option };
        command.SetAction(Run);
        return command;
    }

    private int Run(ParseResult line)
    {
        string folder = stores.Folder(line);
        string? text = line.GetValue(_code);
        if (text is null)
        {
            return Queue(line, Directory.Exists(folder) ? stores.Open(folder) : null);
        }

        if (CaseCode.Parse(text) is not { } code)
        {
            output.Problems("reviews", [new Problem("code", "This is not a case code.", CaseCode.Allowed, Found.Of(text))]);
            return ExitCode.Usage;
        }

        CaseBook? book = Directory.Exists(folder) ? stores.Open(folder) : null;
        // Opened as a case first, so that it is written down who saw it.
        if (book?.Open(code) is null || book.Reviews.Open(code) is not { } review)
        {
            output.Message($"progression reviews: there is no plan of a case {code} in the store {Found.Of(folder)}.");
            return ExitCode.NoInput;
        }

        Answer(line, () => output.Json(ReviewAnswers.Of(review)), () => output.Data(ReviewAnswers.Text(review)));
        return ExitCode.Good;
    }

    private int Queue(ParseResult line, CaseBook? book)
    {
        QueueState queue = new QueueState { Account = book?.By.UserId ?? "", Now = environment.Clock.GetUtcNow() }.With(book?.Reviews.Waiting() ?? [], environment.Clock.GetUtcNow());
        Answer(line, () => output.Json(ReviewAnswers.Of(queue)), () => output.Data(ReviewAnswers.Text(queue)));
        return ExitCode.Good;
    }

    private void Answer(ParseResult line, Action json, Action text) => (line.GetValue(_json) ? json : text)();
}
