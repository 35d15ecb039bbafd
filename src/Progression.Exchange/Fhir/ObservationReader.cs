using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Exchange.Import;
using Progression.Records.Codes;

namespace Progression.Exchange.Fhir;

/// <summary>Reads one observation after another: what was measured, on which day, and the value in the unit in which it is kept. Nothing is guessed.</summary>
/// <param name="ground">The case, the library and the day.</param>
/// <param name="codes">The public codes that are known.</param>
/// <param name="deficits">How extension deficits are written where the bundle comes from; null when nobody has said it.</param>
internal sealed class ObservationReader(ImportGround ground, StandardCodes codes, DeficitSign? deficits)
{
    // As a case file takes it; catches slips. Common practice, no source.
    private const double LeastMass = 20;
    private const double MostMass = 350;

    private static readonly ImmutableArray<string> Statuses = ["final", "amended", "corrected"];

    private readonly IncomingCode _codes = new(ground, codes);

    /// <summary>What an observation comes to.</summary>
    public IncomingObservation Read(IncomingEntry entry)
    {
        FhirPart resource = entry.Resource;
        if (resource.Text("status") is not { } status || !Statuses.Contains(status))
        {
            return Refused(new ImportProblem(entry.At("status"), "Only what is final comes in.", string.Join(", ", Statuses), resource.Raw("status")));
        }

        if (resource.Codings("code").FirstOrDefault(one => one.System == FhirSystems.Sign).Code is { } sign)
        {
            return Answer(entry, sign);
        }

        (string measure, bool isOurs, ImportProblem? problem) = _codes.Measure(entry);
        return problem is not null ? Refused(problem)
            : measure == StandardCode.BodyMass ? Mass(entry)
            : MeasureIds.Computed.Contains(measure) ? new IncomingObservation { Computed = ground.Library.Measures[measure].Title }
            : Reading(entry, ground.Library.Measures[measure], isOurs);
    }

    private IncomingObservation Reading(IncomingEntry entry, Measure measure, bool isOurs)
    {
        DeficitSign? said = isOurs || !WrittenDeficit.Concerns(measure.Id) ? DeficitSign.Positive : deficits ?? ground.Patient.DeficitWritten;
        if (said is not DeficitSign sign)
        {
            return Refused(new ImportProblem(
                entry.At("code"), "The code does not say how a deficit is written, and it has not been said for this case.", "--deficits positive or --deficits negative", measure.Title));
        }

        (DateOnly day, ImportProblem? problem) = IncomingValue.Day(entry);
        problem ??= ground.WrongDay(entry.At("effectiveDateTime"), day, hasBaseline: true);
        if (problem is not null)
        {
            return Refused(problem);
        }

        (double value, problem) = IncomingValue.Of(entry, entry.Resource, measure, "");
        if (problem is not null)
        {
            return Refused(problem);
        }

        (Reading? reading, problem) = ReadingDetails.Of(entry, measure, new Reading(measure.Id, WrittenDeficit.Turn(sign, measure.Id, value)), sign);
        return problem is not null ? Refused(problem) : new IncomingObservation { Reading = new FoundReading(entry.At("value"), day, reading!) };
    }

    private IncomingObservation Answer(IncomingEntry entry, string sign)
    {
        if (!Signs.Questions.ContainsKey(sign) && !ground.Library.RedFlags.SelectMany(flag => flag.Questions).Any(question => question.Id == sign))
        {
            return Refused(new ImportProblem(entry.At("code"), "There is no such question.", "the id of a sign or of a question of a red flag", sign));
        }

        (DateOnly day, ImportProblem? problem) = IncomingValue.Day(entry);
        problem ??= ground.WrongDay(entry.At("effectiveDateTime"), day, hasBaseline: true);
        Answer? answer = entry.Resource.Truth("valueBoolean") is bool yes ? (yes ? Core.People.Answer.Yes : Core.People.Answer.No)
            : entry.Resource.Codings("dataAbsentReason").Any(one => one.Code == "unknown") ? Core.People.Answer.Unknown
            : null;
        problem ??= answer is null
            ? new ImportProblem(entry.At("valueBoolean"), "There is no answer here.", "true or false; unknown as the reason why it is absent", entry.Resource.Raw("valueBoolean"))
            : null;
        string? rater = entry.Resource.Parts("performer").Select(one => FhirNode.Words(one.Text("display"))?.GetValue<string>()).FirstOrDefault();
        return problem is not null ? Refused(problem) : new IncomingObservation { Answer = new FoundAnswer(entry.At("value"), day, sign, answer!.Value, rater) };
    }

    private IncomingObservation Mass(IncomingEntry entry)
    {
        (DateOnly day, ImportProblem? problem) = IncomingValue.Day(entry);
        problem ??= ground.WrongDay(entry.At("effectiveDateTime"), day, hasBaseline: true);
        double mass = 0;
        if (problem is null)
        {
            (mass, problem) = entry.Resource.Part("valueQuantity") is { } quantity
                ? IncomingValue.Quantity(entry, quantity, "kg", "valueQuantity")
                : (0, new ImportProblem(entry.At("value"), "There is no value with a unit here.", $"valueQuantity in {UcumUnit.Allowed("kg")}", ""));
        }

        problem ??= mass is < LeastMass or > MostMass
            ? new ImportProblem(entry.At("valueQuantity.value"), "The body mass is out of range.", $"{LeastMass} to {MostMass} kg", entry.Resource.Part("valueQuantity")!.Value.Raw("value"))
            : null;
        return problem is not null ? Refused(problem) : new IncomingObservation { BodyMass = mass };
    }

    private static IncomingObservation Refused(ImportProblem problem) => new() { Problem = problem };
}
