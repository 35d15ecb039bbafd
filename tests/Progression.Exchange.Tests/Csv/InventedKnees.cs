using System.Collections.Immutable;
using Bogus;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Quantities;
using Progression.Exchange.Tests.Import;

namespace Progression.Exchange.Tests.Csv;

/// <summary>Cases by a seeded generator, with texts that a careless reader or writer of tables would break on.</summary>
internal static class InventedKnees
{
    public static IEnumerable<Case> Some(int seed, int count)
    {
        Faker faker = new() { Random = new Randomizer(seed) };
        return Enumerable.Range(0, count).Select(_ => SomeKnee.Patient with
        {
            PreOp = faker.Random.Bool() ? Visit(faker, SomeKnee.Operated.AddDays(-faker.Random.Int(0, 60))) : null,
            Assessments = [.. Enumerable.Range(0, faker.Random.Int(0, 5)).Select(week => Visit(faker, SomeKnee.Operated.AddDays(7 * week)))],
            Sessions = [.. Enumerable.Range(0, faker.Random.Int(0, 8)).Select(day => Session(faker, SomeKnee.Operated.AddDays(1 + (day / 2))))],
        });
    }

    public static string Words(Faker faker) => faker.PickRandom(
        "KL", "two words", "a, b", "a; b", "say \"so\"", "\"", "=1+1", "+49", "-5", "@x", "'quoted", "'=", "tab", "é 膝 µ", "null", "2026-03-09", "1,5", "50 %", "back\\slash", "# no comment", "a: b");

    private static Assessment Visit(Faker faker, DateOnly date)
    {
        IEnumerable<Measure> measures = SomeKnee.Library.Measures.Values.Where(measure => !MeasureIds.Computed.Contains(measure.Id) && (measure.Id == MeasureIds.LeverArm || faker.Random.Bool()));
        return new Assessment(
            date,
            measures.Select(measure => Reading(faker, measure)).ToImmutableSortedDictionary(reading => reading.Measure, reading => reading, StringComparer.Ordinal),
            ImmutableSortedDictionary.Create<string, Answer>(StringComparer.Ordinal))
        { Rater = Maybe(faker, () => Words(faker)) };
    }

    private static Reading Reading(Faker faker, Measure measure) =>
        new(measure.Id, measure.Whole || measure.Id == MeasureIds.Effusion ? faker.Random.Int((int)measure.Least, (int)measure.Most) : Amount(faker, measure.Least, measure.Most))
        {
            Trials = Maybe(faker, () => (int?)faker.Random.Int(1, 20)),
            Rater = Maybe(faker, () => Words(faker)),
            Device = Maybe(faker, () => Words(faker)),
            Position = Maybe(faker, () => Words(faker)),
            Steps = Maybe(faker, () => (int?)faker.Random.Int(1, 60)),
        };

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

    private static double Amount(Faker faker, double least, double most) => Math.Round(faker.Random.Double(least, most), faker.Random.Int(0, 6)) + 0.0; // no minus zero

    private static T? Maybe<T>(Faker faker, Func<T> make) => faker.Random.Bool() ? make() : default;
}
