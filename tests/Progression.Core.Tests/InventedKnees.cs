using System.Collections.Immutable;
using Bogus;
using Progression.Core.Drafting;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Quantities;

namespace Progression.Core.Tests;

/// <summary>Knees made by a seeded generator: well and ill, fully and hardly measured, early and late. Each can be drafted.</summary>
internal static class InventedKnees
{
    private const int Seed = 20261125;

    private static readonly ImmutableArray<string> Regimens =
        [.. Knee.Library.Regimens.Keys.Where(id => PlanDraft.Draft(Knee.Well.Case, Knee.Library, new DraftOrder { Regimen = id }).Value is not null)];

    internal static IEnumerable<Knee> Some(int count, int seed = Seed)
    {
        Faker faker = new() { Random = new Randomizer(seed) };
        for (int made = 0; made < count; made++)
        {
            yield return One(faker);
        }
    }

    /// <summary>300 knees, each with its draft.</summary>
    internal static ImmutableArray<(Knee Knee, PlanRevision Plan)> Drafted { get; } = [.. Some(300).Select(knee => (knee, knee.Draft()))];

    private static Knee One(Faker faker)
    {
        Knee knee = new(Knee.Well.Case with
        {
            WeightBearing = faker.Random.Bool(0.9f) ? faker.PickRandom<WeightBearing>() : null,
            OtherKnee = faker.PickRandom<OtherKnee>(),
            Surgeon = new SurgeonLimits
            {
                FlexionAtMost = faker.Random.Bool(0.1f) ? Angle.FromDegrees(faker.Random.Int(60, 120)) : null,
                NoResistanceBefore = faker.Random.Bool(0.1f) ? Knee.Day(faker.Random.Int(0, 60)) : null,
            },
            PreOp = faker.Random.Bool(0.7f) ? Knee.Well.Case.PreOp : null,
            Regimen = faker.Random.Bool() ? null : faker.PickRandom(Regimens.AsEnumerable()),
        });
        foreach (ScreeningItem item in Knee.Library.Screening.Where(_ => faker.Random.Bool(0.03f)))
        {
            knee = knee.Screened(item.Id, faker.PickRandom<Answer>(), faker.Random.Bool() ? new Clearance("Surgeon", Knee.Day(0), "may be used") : null);
        }

        int day = faker.Random.Int(1, 20);
        for (int session = 0; session < faker.Random.Int(0, 4); session++)
        {
            knee = knee.Stimulated(day + session, faker.Random.Bool(0.7f) ? faker.Random.Bool() : null, faker.Random.Bool() ? "noted" : null, faker.Random.Bool() ? faker.Random.Int(5, 30) : null);
        }

        for (int visit = 0; visit < faker.Random.Int(0, 6); visit++, day += faker.Random.Int(2, 10))
        {
            knee = knee.Seen(day, Visit(faker));
        }

        int least = PostOpWeek.Of(Knee.Day(0), PlanDraft.FirstDay(knee.Case, Knee.Library));
        return new Knee(knee.Case with { Weeks = faker.Random.Int(least, PostOpWeek.Longest) });
    }

    private static Look Visit(Faker faker)
    {
        Look look = Look.Well;
        foreach (Measure measure in Knee.Library.Measures.Values.Where(one => look.Readings.ContainsKey(one.Id) && faker.Random.Bool(0.4f)))
        {
            (double least, double most) = measure.Unit == "deg" && measure.Id != MeasureIds.FlexionActive ? (-5, 20) : (measure.Least, Math.Min(measure.Most, 140));
            double value = faker.Random.Double(least, most);
            look = look.With(measure.Id, measure.Whole ? Math.Round(value) : Math.Round(value, 1));
        }

        foreach (string sign in Signs.Questions.Keys.Where(_ => faker.Random.Bool(0.05f)))
        {
            look = look.Says(sign, faker.PickRandom<Answer>());
        }

        return look.Readings.Keys.Concat(look.Answers.Keys).Where(_ => faker.Random.Bool(0.08f)).Aggregate(look, (left, id) => left.Without(id));
    }
}
