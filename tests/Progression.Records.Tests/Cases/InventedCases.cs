using System.Collections.Immutable;
using Bogus;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Quantities;

namespace Progression.Records.Tests.Cases;

/// <summary>Cases made by a seeded generator, each as full or as empty as chance has it; every one may be read on <see cref="CaseText.Today"/>.</summary>
internal static class InventedCases
{
    private static readonly DateOnly Operation = new(2026, 2, 2);

    public static IEnumerable<Case> Some(int seed, int count)
    {
        Faker faker = new() { Random = new Randomizer(seed) };
        for (int made = 0; made < count; made++)
        {
            yield return One(faker);
        }
    }

    private static Case One(Faker faker) => new()
    {
        Code = CaseCode.Parse(faker.Random.Replace("??-###"))!,
        Operation = new Operation(Operation, faker.PickRandom<Side>(), Words(faker)),
        Born = Maybe(faker, () => (DateOnly?)new DateOnly(1940, 1, 1).AddDays(faker.Random.Int(0, 10_000))),
        BodyMass = Maybe(faker, () => Mass.FromKilograms(Amount(faker, 20, 350))),
        WeightBearing = Maybe(faker, () => (WeightBearing?)faker.PickRandom<WeightBearing>()),
        OtherKnee = faker.PickRandom<OtherKnee>(),
        Surgeon = new SurgeonLimits
        {
            FlexionAtMost = Maybe(faker, () => Angle.FromDegrees(Amount(faker, 0, 160))),
            NoResistanceBefore = Maybe(faker, () => (DateOnly?)Operation.AddDays(faker.Random.Int(0, 300))),
            Text = Maybe(faker, () => Words(faker)),
        },
        Therapist = Maybe(faker, () => Words(faker)),
        Stimulator = Maybe(faker, () => Words(faker)),
        Pads = Maybe(faker, () => faker.Random.Bool() ? PadSize.Round(Side(faker)) : PadSize.Rectangle(Side(faker), Side(faker))),
        Screening = faker.Random.Bool() ? Screening.NotDone : Answers(faker),
        PreOp = Maybe(faker, () => Visit(faker, Operation.AddDays(-faker.Random.Int(0, 60)))),
        Assessments = [.. Enumerable.Range(0, faker.Random.Int(0, 5)).Select(week => Visit(faker, Operation.AddDays(7 * week)))],
        Sessions = [.. Enumerable.Range(0, faker.Random.Int(0, 6)).Select(day => Session(faker, Operation.AddDays(1 + (day / 2))))],
        FlagNotes = [.. Enumerable.Range(0, faker.Random.Int(0, 2)).Select(day => new FlagNote("clot-leg", Operation.AddDays(day), Words(faker), Words(faker)))],
        DeficitWritten = Maybe(faker, () => (DeficitSign?)faker.PickRandom<DeficitSign>()),
        Regimen = Maybe(faker, () => SmallLibrary.Value.DefaultRegimen),
        Weeks = Maybe(faker, () => (int?)faker.Random.Int(1, 26)),
        PlanFrom = Maybe(faker, () => (DateOnly?)Operation.AddDays(faker.Random.Int(0, 100))),
    };

    private static Screening Answers(Faker faker) => new(
        Operation.AddDays(faker.Random.Int(-5, 5)),
        SmallLibrary.Value.Screening.Where(_ => faker.Random.Bool()).Select(item =>
        {
            Answer answer = faker.PickRandom<Answer>();
            bool cleared = item.CanBeCleared && answer != Answer.No && faker.Random.Bool();
            return new ScreeningAnswer(item.Id, answer, cleared ? new Clearance(Words(faker), Operation, Words(faker)) : null);
        }).ToImmutableSortedDictionary(answer => answer.Item, answer => answer, StringComparer.Ordinal));

    private static Assessment Visit(Faker faker, DateOnly date) => new(
        date,
        SmallLibrary.Value.Measures.Values
            .Where(measure => !MeasureIds.Computed.Contains(measure.Id) && (measure.Id == MeasureIds.LeverArm || faker.Random.Bool()))
            .Select(measure => Reading(faker, measure))
            .ToImmutableSortedDictionary(reading => reading.Measure, reading => reading, StringComparer.Ordinal),
        Signs.Questions.Keys.Where(_ => faker.Random.Bool()).ToImmutableSortedDictionary(sign => sign, _ => faker.PickRandom<Answer>(), StringComparer.Ordinal))
    {
        Rater = Maybe(faker, () => Words(faker)),
        Corrected = date.DayNumber % 2 == 0 ? [] :
        [
            new VisitCorrection.TakenOut(MeasureIds.FlexionActive, 70.5, date, "KL", null),
            new VisitCorrection.AnswerWas(Signs.StraightLegRaise, Answer.Unknown, date, "KL", "Asked again."),
            new VisitCorrection.DayWas(date.AddDays(-1), date, "KL", "A slip."),
        ],
    };

    private static Reading Reading(Faker faker, Measure measure)
    {
        double Value() => measure.Whole ? faker.Random.Int((int)measure.Least, (int)measure.Most) : Amount(faker, measure.Least, measure.Most);
        Reading reading = measure.Scale != ErrorScale.Ordinal && faker.Random.Bool()
            ? Core.People.Reading.OfTrials(measure.Id, [.. Enumerable.Range(0, faker.Random.Int(1, 20)).Select(_ => Value())])
            : new Reading(measure.Id, Value()) { Trials = Maybe(faker, () => (int?)faker.Random.Int(1, 20)) };
        return reading with
        {
            Rater = Maybe(faker, () => Words(faker)),
            Device = Maybe(faker, () => Words(faker)),
            Position = Maybe(faker, () => Words(faker)),
            Steps = Maybe(faker, () => (int?)faker.Random.Int(1, 60)),
            Corrected = [.. Enumerable.Range(0, faker.Random.Int(0, 2)).Select(day =>
                new Correction(Value(), Operation.AddDays(day), Words(faker), Maybe(faker, () => Words(faker))))],
        };
    }

    private static SessionLog Session(Faker faker, DateOnly date) => new(date, faker.Random.Int(0, 1000))
    {
        Peak = Maybe(faker, () => Current.FromMilliamperes(Amount(faker, 0, 120))),
        Comfort = Rating(faker),
        Evoked = Maybe(faker, () => Torque.FromNewtonMetres(Amount(faker, 0, 200))),
        StrongContractionTolerated = Maybe(faker, () => (bool?)faker.Random.Bool()),
        Exercises = [.. Enumerable.Range(0, faker.Random.Int(0, 3)).Select(_ => Done(faker))],
        PainBefore = Rating(faker),
        PainAfter = Rating(faker),
        PainNextMorning = Rating(faker),
        Skin = Maybe(faker, () => (SkinCheck?)faker.PickRandom<SkinCheck>()),
        Adherence = Maybe(faker, () => Percentage.FromPercent(Amount(faker, 0, 200))),
        Note = Maybe(faker, () => Words(faker)),
    };

    private static ExerciseDone Done(Faker faker) => faker.Random.Int(0, 2) switch
    {
        0 => new ExerciseDone("brisk-walk", []) { Time = Maybe(faker, () => Duration.FromSeconds(Amount(faker, 1, 14_400))) },
        _ => new ExerciseDone("quad-set", [.. Enumerable.Range(0, faker.Random.Int(1, 5)).Select(_ =>
            new SetDone(Maybe(faker, () => (int?)faker.Random.Int(0, 500)), Maybe(faker, () => Mass.FromKilograms(Amount(faker, 0, 300)))))]),
    };

    private static int? Rating(Faker faker) => Maybe(faker, () => (int?)faker.Random.Int(0, 10));

    private static Length Side(Faker faker) => Length.FromCentimetres(Amount(faker, 0.1, 50));

    private static double Amount(Faker faker, double least, double most) => Math.Round(faker.Random.Double(least, most), faker.Random.Int(0, 6)) + 0.0; // no minus zero

    // Texts that a careless writer would break on, among plain ones.
    private static string Words(Faker faker) => faker.Random.Bool()
        ? faker.Lorem.Sentence(4)
        : faker.PickRandom("null", "~", "no", "007", "1e3", "# not a comment", "- dash", "a: b", "\"quoted\" 'twice'", "back\\slash \\n", "{x}", "[y", "&a *b !c", "50 %", "é 膝 µ", "2026-03-09");

    private static T? Maybe<T>(Faker faker, Func<T> make) => faker.Random.Bool() ? make() : default;
}
