using System.Collections.Immutable;
using System.Text;
using Progression.Core.Checks;
using Progression.Core.Drafting;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Records.Cases;
using Progression.Records.Json;
using Progression.Records.Plans;
using Progression.Records.Tests.Cases;

namespace Progression.Records.Tests.Plans;

public sealed class PlanJsonTests
{
    private static readonly ImmutableArray<(Case Case, PlanRevision Plan)> Plans = [.. InventedPlans.Some(seed: 5, count: 260)];

    [Fact]
    public void What_is_written_is_read_back_as_the_same_plan()
    {
        Assert.InRange(Plans.Length, 200, 260);
        foreach ((_, PlanRevision written) in Plans)
        {
            PlanRevision read = PlanJson.Read(PlanJson.Write(written));

            Assert.Equal(
                (written.Code, written.Operation, written.Weeks, written.From, written.Regimen, written.LibraryVersion),
                (read.Code, read.Operation, read.Weeks, read.From, read.Regimen, read.LibraryVersion));
            Assert.Equal(written.Lanes, read.Lanes);
            Assert.Equal(written.StimBarred, read.StimBarred);
            Assert.Equal(written.Cells.Keys.ToHashSet(), read.Cells.Keys.ToHashSet());
            Assert.DoesNotContain(written.Cells, pair => !Same(pair.Value, read.At(pair.Key)!));
            Assert.Equal(PlanJson.Write(written), PlanJson.Write(read));
        }
    }

    [Fact]
    public void The_first_day_that_can_be_changed_is_kept_where_it_is_not_the_first_day()
    {
        PlanRevision plan = Plans[0].Plan;
        PlanRevision later = plan with { OpenFrom = plan.From.AddDays(9) };

        Assert.Equal(plan.From.AddDays(9), PlanJson.Read(PlanJson.Write(later)).OpenFrom);
        Assert.Equal(plan.From, PlanJson.Read(PlanJson.Write(plan)).OpenFrom);
    }

    [Theory]
    [InlineData(5, 3, null)]
    [InlineData(5, 0, "the skin is sore")]
    [InlineData(0, 0, null)]
    public void What_was_decided_on_a_proposal_is_kept(int proposed, int taken, string? reason)
    {
        PlanDecision decision = PlanDecision.Of(new DateOnly(2026, 3, 17), proposed, taken, reason);

        Assert.Equal(decision, PlanJson.Read(PlanJson.Write(Plans[0].Plan with { Decision = decision })).Decision);
        Assert.Null(PlanJson.Read(PlanJson.Write(Plans[0].Plan)).Decision);
    }

    [Fact]
    public void A_stored_refusal_without_a_reason_is_not_a_plan()
    {
        string text = PlanJson.Write(Plans[0].Plan with { Decision = PlanDecision.Of(new DateOnly(2026, 3, 17), 5, 1, null) });

        Assert.Throws<FormatException>(() => PlanJson.Read(text.Replace("\"taken\":1", "\"taken\":0", StringComparison.Ordinal)));
        Assert.Throws<FormatException>(() => PlanJson.Read(text.Replace("\"taken\":1", "\"taken\":6", StringComparison.Ordinal)));
    }

    // Else the test above would be true of half the form only.
    [Fact]
    public void The_invented_plans_hold_every_kind_of_content_load_and_pin()
    {
        ImmutableArray<PlanCell> cells = [.. Plans.SelectMany(made => made.Plan.Cells.Values)];
        ImmutableArray<ExerciseDose> doses = [.. cells.Select(cell => cell.Content).OfType<ActiveCell>().Select(cell => cell.Dose)];

        Assert.Equal(
            [typeof(ActiveCell), typeof(SkillCell), typeof(StimCell), typeof(TargetCell)],
            cells.Select(cell => cell.Content?.GetType()).OfType<Type>().Distinct().OrderBy(type => type.Name));
        Assert.Contains(cells, cell => cell is { IsPinned: true, Content: null });
        Assert.Contains(cells, cell => cell.Pin is { Suggested: null });
        Assert.Contains(cells, cell => cell.Pin is { Reason: not null });
        Assert.Contains(doses, dose => dose.Load?.Mass is not null);
        Assert.Contains(doses, dose => dose.Load?.OfMaximum is not null);
        Assert.Contains(doses, dose => dose.Load?.Effort is not null);
        Assert.Contains(doses, dose => dose.Bout is not null);
        Assert.Contains(Plans, made => !made.Plan.StimBarred.IsEmpty);
        Assert.Contains(Plans, made => made.Plan.StimBarred.IsEmpty);
    }

    [Fact]
    public void The_text_is_already_in_the_form_that_is_hashed()
    {
        IEnumerable<string> texts = Plans.Select(made => PlanJson.Write(made.Plan)).Concat(InventedCases.Some(seed: 4, count: 200).Select(CaseJson.Write));

        Assert.All(texts, text => Assert.Equal(CanonicalJson.Of(text), text));
    }

    [Fact]
    public void Equal_drafts_give_equal_texts()
    {
        (Case patient, PlanRevision plan) = InventedPlans.One();

        Assert.Equal(PlanJson.Write(plan), PlanJson.Write(PlanDraft.Draft(patient, InventedPlans.Library).Value!));
    }

    [Theory]
    [InlineData("")]
    [InlineData("null")]
    [InlineData("[]")]
    [InlineData("{}")]
    [InlineData("{\"schema\":\"plan/2\"}")]
    [InlineData("{\"schema\":\"case/1\",\"weeks\":6}")]
    [InlineData("{\"schema\":7,\"weeks\":6}")]
    public void Any_other_text_is_refused(string json) => Assert.Throws<FormatException>(() => PlanJson.Read(json));

    [Theory]
    [InlineData("\"weeks\":6", "\"weeks\":27")]
    [InlineData("\"weeks\":6", "\"weeks\":5")]
    [InlineData("\"weeks\":6", "\"weeks\":1e99")]
    [InlineData("\"operation\":\"2026-02-02\"", "\"operation\":\"2026-02-30\"")]
    [InlineData("\"code\":\"K-014\"", "\"code\":\"Mary Poppins\"")]
    [InlineData("\"contractions\":15", "\"contractions\":-15")]
    [InlineData("\"contractions\":15", "\"contractions\":15.5")]
    [InlineData("\"rung\":\"high volume\"", "\"rung\":\"higher volume\"")]
    [InlineData("\"kind\":\"stim\"", "\"kind\":\"sting\"")]
    [InlineData("\"days\":\"daily\"", "\"days\":\"dayly\"")]
    [InlineData("\"lane\":\"bend\"", "\"lane\":\"band\"")]
    [InlineData("\"id\":\"calf\"", "\"id\":\"hip\"")]
    [InlineData("\"kind\":\"target\",\"value\":", "\"kind\":\"target\",\"value\":1e999,\"x\":")]
    public void A_stored_plan_with_a_spoilt_field_is_refused_not_half_read(string piece, string by)
    {
        string good = PlanJson.Write(InventedPlans.One().Plan);
        int at = good.IndexOf(piece, StringComparison.Ordinal);

        Assert.True(at >= 0, piece);
        Assert.Throws<FormatException>(() => PlanJson.Read(good[..at] + by + good[(at + piece.Length)..]));
    }

    // A damaged text either is refused in one way only, or is a plan that can be checked and written like any other.
    [Fact]
    public void No_damaged_plan_makes_the_reader_or_the_checks_fail()
    {
        Bogus.Randomizer random = new(8);
        (Case patient, PlanRevision plan) = InventedPlans.One();
        byte[] good = Encoding.UTF8.GetBytes(PlanJson.Write(plan));
        int refused = 0;
        const int rounds = 600;
        for (int round = 0; round < rounds; round++)
        {
            byte[] bytes = [.. good[..(random.Bool(0.1f) ? random.Int(0, good.Length) : good.Length)]];
            for (int change = random.Int(1, 3); change > 0 && bytes.Length > 0; change--)
            {
                bytes[random.Int(0, bytes.Length - 1)] = random.Bool() ? (byte)random.Int(0, 255) : (byte)random.ArrayElement("0123456789-\"{}[],:e".ToCharArray());
            }

            try
            {
                PlanRevision read = PlanJson.Read(Encoding.UTF8.GetString(bytes));
                Assert.False(PlanCheck.Check(patient, read, InventedPlans.Library).IsDefault);
                Assert.NotEmpty(PlanJson.Write(read));
            }
            catch (FormatException)
            {
                refused++;
            }
        }

        Assert.InRange(refused, 50, rounds - 50);
    }

    // Compared by hand: the test library's own comparison takes half a minute for so many cells.
    private static bool Same(PlanCell written, PlanCell read) =>
        written.Content == read.Content && written.Pin == read.Pin
        && written.Basis with { Inputs = [], Limits = [] } == read.Basis with { Inputs = [], Limits = [] }
        && written.Basis.Inputs.SequenceEqual(read.Basis.Inputs) && written.Basis.Limits.SequenceEqual(read.Basis.Limits);
}
