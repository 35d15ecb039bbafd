using System.Collections.Immutable;
using Bogus;
using Progression.Core.Drafting;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Quantities;
using Progression.Records.Library;

namespace Progression.Records.Tests.Plans;

/// <summary>Cases made by a seeded generator, drafted with the shipped library and then edited by hand here and there.</summary>
internal static class InventedPlans
{
    private static readonly DateOnly Operated = new(2026, 2, 2);

    public static ClinicalLibrary Library { get; } = LibraryReader.Default();

    public static IEnumerable<(Case Case, PlanRevision Plan)> Some(int seed, int count)
    {
        Faker faker = new() { Random = new Randomizer(seed) };
        for (int made = 0; made < count; made++)
        {
            Case patient = Patient(faker);
            PlanRevision? drafted = PlanDraft.Draft(patient, Library).Value;
            if (drafted is not null)
            {
                yield return (patient, Edited(faker, drafted));
            }
        }
    }

    /// <summary>One whole plan with stim, unedited.</summary>
    public static (Case Case, PlanRevision Plan) One(string code = "K-014")
    {
        Case patient = Patient(new Faker { Random = new Randomizer(1) }) with
        {
            Code = CaseCode.Parse(code)!,
            Screening = Answers(_ => Answer.No),
            Assessments = [],
            Weeks = 6,
            PlanFrom = null,
            Regimen = null,
        };
        return (patient, PlanDraft.Draft(patient, Library).Value!);
    }

    private static Case Patient(Faker faker) => new()
    {
        Code = CaseCode.Parse(faker.Random.Replace("??-###"))!,
        Operation = new Operation(Operated, faker.PickRandom<Side>(), "Knee replacement"),
        WeightBearing = faker.PickRandom<WeightBearing>(),
        OtherKnee = faker.PickRandom<OtherKnee>(),
        Screening = Answers(_ => faker.Random.Bool(0.98f) ? Answer.No : faker.PickRandom<Answer>()),
        Assessments = [.. Enumerable.Range(0, faker.Random.Int(0, 4)).Select(visit => Visit(faker, Operated.AddDays(3 + (7 * visit))))],
        Weeks = faker.Random.Int(4, 26),
        Regimen = faker.PickRandom("strong-15-twice-daily", "strong-45-minutes", "burst-10-twelve-visits"),
        PlanFrom = faker.Random.Bool() ? Operated.AddDays(faker.Random.Int(1, 27)) : null,
    };

    private static Screening Answers(Func<ScreeningItem, Answer> answer) => new(Operated, Library.Screening.ToImmutableSortedDictionary(
        item => item.Id, item => new ScreeningAnswer(item.Id, answer(item), null), StringComparer.Ordinal));

    private static Assessment Visit(Faker faker, DateOnly date) => new(
        date,
        new[]
        {
            new Reading(MeasureIds.FlexionActive, faker.Random.Int(40, 120)), new Reading(MeasureIds.ExtensionActive, faker.Random.Int(0, 20)),
            new Reading(MeasureIds.ExtensionPassive, faker.Random.Int(0, 8)), new Reading(MeasureIds.QuadricepsTorque, faker.Random.Int(10, 90)),
        }.Where(_ => faker.Random.Bool(0.8f)).ToImmutableSortedDictionary(reading => reading.Measure, reading => reading, StringComparer.Ordinal),
        new Dictionary<string, Answer> { [Signs.ContractionVisible] = Answer.Yes, [Signs.SensationNormal] = Answer.Yes, [Signs.ClotSigns] = Answer.No }
            .ToImmutableSortedDictionary(StringComparer.Ordinal));

    private static PlanRevision Edited(Faker faker, PlanRevision plan)
    {
        for (int edit = faker.Random.Int(0, 6); edit > 0; edit--)
        {
            Lane lane = faker.PickRandom(plan.Lanes.Where(lane => lane.Band != Band.Checks));
            CellAddress address = new(lane.Id, faker.Random.Int(plan.FirstWeek, plan.Weeks));
            plan = PlanEdit.Set(plan, address, faker.Random.Bool(0.2f) ? null : Content(faker, lane), faker.Random.Bool() ? Words(faker) : null);
        }

        return plan;
    }

    private static CellContent Content(Faker faker, Lane lane) => lane switch
    {
        { Band: Band.Stim } => new StimCell(faker.PickRandom<Rung>(), faker.Random.Int(1, 600), faker.Random.Int(1, 6), Days(faker)),
        { Band: Band.Active } => new ActiveCell(faker.PickRandom(Library.Exercises.Keys.AsEnumerable()), Dose(faker)),
        { Measure: null } => new SkillCell(Words(faker)),
        _ => new TargetCell(Amount(faker, -20, 200)),
    };

    private static ExerciseDose Dose(Faker faker) =>
        (faker.Random.Bool()
            ? ExerciseDose.InTime(Duration.FromSeconds(Amount(faker, 1, 3600)), faker.Random.Int(1, 12))
            : ExerciseDose.InRepetitions(faker.Random.Int(1, 20), faker.Random.Int(1, 200), faker.Random.Int(1, 12))) with
        {
            Days = Days(faker),
            Hold = faker.Random.Bool() ? Duration.FromSeconds(Amount(faker, 0.5, 60)) : null,
            Load = faker.Random.Int(0, 3) switch
            {
                0 => ExerciseLoad.Of(Mass.FromKilograms(Amount(faker, 0.5, 300))),
                1 => ExerciseLoad.Of(Percentage.FromPercent(Amount(faker, 1, 100))),
                2 => ExerciseLoad.AtEffort(faker.Random.Int(6, 20)),
                _ => null,
            },
        };

    private static DaysOfWeek Days(Faker faker) => DaysOfWeek.Of([.. Enum.GetValues<DayOfWeek>().Where(_ => faker.Random.Bool())]);

    private static double Amount(Faker faker, double least, double most) => Math.Round(faker.Random.Double(least, most), faker.Random.Int(0, 6)) + 0.0; // no minus zero

    // Texts that a careless writer would break on, among plain ones.
    private static string Words(Faker faker) => faker.Random.Bool()
        ? faker.Lorem.Sentence(4)
        : faker.PickRandom("null", "", "\"quoted\" 'twice'", "back\\slash \\n", "<b>&amp;</b>", "{\"a\":1}", "é 膝 µ 🦵", "line\u2028end", "\u007f", "tab\there");
}
