using System.Collections.Immutable;
using Bogus;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Quantities;

namespace Progression.SeedDemo;

/// <summary>Makes the case of a story: readings along the library's milestones, with noise from a seeded generator.</summary>
internal sealed class InventedKnee(KneeStory story, DateOnly today, ClinicalLibrary library, Randomizer chance)
{
    private static readonly string[] Procedures =
        ["Total knee replacement, cemented", "Total knee replacement, without cement", "Total knee replacement, kneecap resurfaced"];

    private readonly DateOnly _operation = today.AddDays(-story.Day);

    /// <summary>The case; the same story, day, library and seed give the same one.</summary>
    public Case Make()
    {
        double mass = Math.Round(chance.Double(62, 98));
        Case bare = new()
        {
            Code = CaseCode.Parse(story.Code) ?? throw new ArgumentException($"\"{story.Code}\" is not a case code.", nameof(story)),
            Operation = new Operation(_operation, chance.Bool() ? Side.Left : Side.Right, chance.ArrayElement(Procedures)),
            Born = _operation.AddYears(-chance.Int(58, 81)).AddDays(-chance.Int(0, 364)),
            BodyMass = Mass.FromKilograms(mass),
            WeightBearing = story.WeightBearing,
            OtherKnee = story.OtherKnee,
            Therapist = $"Therapist {chance.Char('A', 'C')}",
            Stimulator = "Two-channel stimulator",
            Pads = PadSize.Rectangle(Length.FromCentimetres(5), Length.FromCentimetres(10)),
            Weeks = story.Weeks,
            DeficitWritten = DeficitSign.Positive,
        };
        KneeCourse course = new(story, bare, library, chance);
        return bare with
        {
            Screening = Screened(),
            PreOp = course.PreOp(),
            Assessments = [.. story.Visits.Select(course.Visit)],
            Sessions = Sessions(),
        };
    }

    /// <summary>Every item answered no, but for what the story says; half of them not asked where it leaves screening open.</summary>
    private Screening Screened()
    {
        ImmutableSortedDictionary<string, ScreeningAnswer> usual = library.Screening
            .Where((_, index) => !story.ScreeningOpen || index % 2 == 0)
            .Select(item => new ScreeningAnswer(item.Id, item.Kind == ScreeningKind.NoConcern ? Answer.Yes : Answer.No, null))
            .ToImmutableSortedDictionary(answer => answer.Item, answer => answer, StringComparer.Ordinal);
        return new Screening(_operation.AddDays(1), usual.SetItems(story.Answers.Select(answer => KeyValuePair.Create(answer.Item, answer))));
    }

    /// <summary>
    /// One log a day of treatment, with a day left out here and there; the current and what it evokes rise. After stim has ended, every other day.
    /// </summary>
    private ImmutableArray<SessionLog> Sessions()
    {
        if (story.StimFrom is not int first)
        {
            return [];
        }

        int last = story.StimUntil ?? story.Day - 1;
        List<(int Day, SessionLog Log)> logs = [];
        for (int day = first; day <= last; day++)
        {
            // The first days are kept, so that familiarising is seen to end.
            if (day < first + 3 || chance.Bool(0.86f))
            {
                logs.Add((day, Session(day, day - first)));
            }
        }

        for (int day = last + 1; day < story.Day; day += 2)
        {
            logs.Add((day, new SessionLog(_operation.AddDays(day), 0)));
        }

        KneeLog rest = new(story, new Randomizer(chance.Int()));
        return [.. logs.Select((one, index) => rest.Filled(one.Log, one.Day, index))];
    }

    private SessionLog Session(int day, int done) => new(_operation.AddDays(day), done < 3 ? 10 + (5 * done) : 30)
    {
        Peak = Current.FromMilliamperes(Math.Round(Math.Min(62, 30 + (1.5 * done)) + chance.Double(-2, 2))),
        Evoked = done % 3 == 0 ? Torque.FromNewtonMetres(Math.Round(Math.Min(22, 5 + (0.9 * done)) + chance.Double(-0.8, 0.8), 1)) : null,
        StrongContractionTolerated = done >= 2,
        Note = done == 2 ? "Strong full contraction, tolerated well; skin fine." : null,
    };
}
