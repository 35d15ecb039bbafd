using Progression.Core.People;
using Progression.Core.Quantities;
using Progression.Records.Cases;
using Progression.Records.Tests.Plans;

namespace Progression.Records.Tests.Cases;

/// <summary>A case that two people changed at the same time.</summary>
public sealed class CaseForkTests
{
    private static readonly Case From = InventedPlans.One().Case with { Sessions = [new SessionLog(new(2026, 2, 9), 15)] };

    [Fact]
    public void What_only_one_changed_is_as_they_have_it()
    {
        CaseFork fork = CaseFork.Of(From, From with { Therapist = "AA" }, From with { BodyMass = Mass.FromKilograms(81) });

        Assert.Empty(fork.Both);
        Assert.Equal(CaseJson.Write(From with { Therapist = "AA", BodyMass = Mass.FromKilograms(81) }), CaseJson.Write(fork.Joined));
    }

    [Fact]
    public void Sessions_of_two_days_stand_in_their_order_and_nothing_is_lost()
    {
        CaseFork fork = CaseFork.Of(
            From, From with { Sessions = [.. From.Sessions, new SessionLog(new(2026, 2, 10), 12)] }, From with { Sessions = [.. From.Sessions, new SessionLog(new(2026, 2, 11), 14)] });

        Assert.Empty(fork.Both);
        Assert.Equal([15, 12, 14], fork.Joined.Sessions.Select(log => log.Contractions));
    }

    [Fact]
    public void Two_sessions_of_one_day_are_asked_about()
    {
        CaseFork fork = CaseFork.Of(
            From, From with { Sessions = [.. From.Sessions, new SessionLog(new(2026, 2, 10), 12)] }, From with { Sessions = [.. From.Sessions, new SessionLog(new(2026, 2, 10), 14)] });

        Assert.Equal(["sessions"], fork.Both);
    }

    [Fact]
    public void What_both_changed_alike_is_no_question_and_what_they_changed_differently_is()
    {
        Assert.Empty(CaseFork.Of(From, From with { Therapist = "AA" }, From with { Therapist = "AA" }).Both);
        CaseFork fork = CaseFork.Of(From, From with { Therapist = "AA" }, From with { Therapist = "BB" });
        Assert.Equal(("therapist", "AA"), (Assert.Single(fork.Both), fork.Joined.Therapist));
    }
}
