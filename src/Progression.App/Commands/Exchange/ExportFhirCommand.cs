using System.CommandLine;
using Progression.App.Commands.Sheets;
using Progression.App.Papers;
using Progression.App.Stores;
using Progression.Core.Entry;
using Progression.Core.People;
using Progression.Core.Reviews;
using Progression.Records.Codes;

namespace Progression.App.Commands.Exchange;

/// <summary><c>progression export fhir</c>: case, readings, plan and review for another program.</summary>
internal static class ExportFhirCommand
{
    private const int LongestName = 120;

    internal static Command Build(PaperWorld world, CliEnvironment environment)
    {
        Option<bool> name = new("--with-name") { Description = "The person's name goes along: it is read from standard input, one line, and not kept." };
        Option<bool> born = new("--with-birth-date") { Description = "The date of birth goes along." };
        Option<string?> codes = CodesOption.Make();
        return new PaperCommand("fhir", ExchangePapers.Bundle, world)
        {
            TakesHeader = false,
            IsPrinted = false,
            Options = [name, born, codes],
            Complete = (order, given, of) => order with
            {
                Bundle = new BundleWishes(environment.Clock.GetUtcNow())
                {
                    Saved = Saved(of.Records, order.Patient.Code, order.Standing.Plan),
                    Name = of.Line.GetValue(name) ? Name(environment.Input, given) : null,
                    WithBirthDate = of.Line.GetValue(born),
                    Codes = CodesOption.Of(codes, given),
                },
            },
        }.Build("Writes a case with its readings, plan and review as a bundle of HL7 FHIR R4.", $"""
            The person is the code of the case unless more is asked for. Readings carry their unit in UCUM; what has no public code leaves under one of
            our own, with words. A plan that is not signed as it stands leaves as a draft. "progression import fhir" takes the readings in again.

            Examples:
              progression export fhir EXAMPLE-07 --out EXAMPLE-07.json
              progression export fhir EXAMPLE-07 | less

            {string.Join("\n", StandardCodesReader.Shipped().Notices.Values).Replace(". ", ".\n", StringComparison.Ordinal)}
            """);
    }

    private static PlanStamp? Saved(OpenRecords? records, CaseCode code, ReviewedPlan plan) =>
        records?.Book.Again(code)?.PlanStamp is { } stamp && stamp.Revision == plan.Revision && stamp.Hash == plan.Hash
            ? new PlanStamp(stamp.Revision, stamp.Hash, stamp.By.UserId, stamp.By.Name, stamp.At)
            : null;

    private static string? Name(TextReader input, GivenOptions given)
    {
        string name = SafeText.OneLine(input.ReadLine()).Trim();
        if (name.Length is 0 or > LongestName)
        {
            given.Problems.Add(new Problem("--with-name", "There is no name on standard input, or it is too long.", $"one line of 1 to {LongestName} characters", $"{name.Length} characters"));
        }

        return name;
    }
}
