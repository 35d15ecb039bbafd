using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Core.Quantities;
using Progression.Core.Stimulation;
using static Progression.Core.Tests.Stimulation.StimCases;

namespace Progression.Core.Tests.Stimulation;

/// <summary>Settings that cannot be true.</summary>
public sealed partial class StimDoseTests
{
    [Fact]
    public void Refuses_an_on_time_shorter_than_the_ramps_inside_it()
    {
        StimSettings settings = Strong with { On = Duration.FromSeconds(4.9), RampDown = Duration.FromSeconds(2) };

        Problem problem = Assert.Single(StimDose.Of(settings).Problems);
        Assert.Equal("on: The on-time is shorter than the ramps inside it. Allowed: at least 5 s, the sum of both ramps. Found: \"4.9 s\".", problem.ToString());
        Assert.NotNull(StimDose.Of(settings with { On = Duration.FromSeconds(5) }).Value);
        Assert.NotNull(StimDose.Of(settings with { Ramps = RampPlacement.Outside }).Value);
    }

    public static TheoryData<string, StimSettings> Zeros => new()
    {
        { "on", new() { On = Duration.FromSeconds(0) } },
        { "session", new() { SessionLength = Duration.FromSeconds(0) } },
        { "pps", new() { Rate = Frequency.FromHertz(0) } },
        { "width", new() { Width = PulseWidth.FromMicroseconds(0) } },
        { "second-width", new() { SecondWidth = PulseWidth.FromMicroseconds(0) } },
        { "carrier", new() { Carrier = Frequency.FromHertz(0) } },
        { "burst-duty", new() { BurstDuty = Percentage.FromPercent(0) } },
        { "max-voluntary", new() { MaximalVoluntary = Torque.FromNewtonMetres(0) } },
        { "contractions", new() { Contractions = 0 } },
        { "per-day", new() { SessionsPerDay = 0 } },
        { "days", new() { DaysPerWeek = 0 } },
        { "weeks", new() { Weeks = 0 } },
        { "contractions", new() { Contractions = -1 } },
        { "contractions", new() { Contractions = 1001 } },
        { "per-day", new() { SessionsPerDay = 25 } },
        { "days", new() { DaysPerWeek = 8 } },
        { "weeks", new() { Weeks = 53 } },
    };

    [Theory]
    [MemberData(nameof(Zeros))]
    public void Refuses_zeros_that_would_mean_no_stim_and_counts_out_of_range(string field, StimSettings settings) =>
        Assert.Equal(field, Assert.Single(StimDose.Of(settings).Problems).Field);

    [Theory]
    [InlineData(1000, 24, 7, 52)]
    [InlineData(1, 1, 1, 1)]
    public void Accepts_counts_at_both_ends(int contractions, int aDay, int days, int weeks) => Assert.NotNull(StimDose.Of(
        new StimSettings { Contractions = contractions, SessionsPerDay = aDay, DaysPerWeek = days, Weeks = weeks }).Value);

    [Theory]
    [InlineData(99.9, true)]
    [InlineData(100, true)]
    [InlineData(100.1, false)]
    public void Refuses_a_burst_longer_than_its_period(double percent, bool good) =>
        Assert.Equal(good, StimDose.Of(Burst with { BurstDuty = Percentage.FromPercent(percent) }).Problems.IsEmpty);

    [Theory]
    [InlineData(49, false)]
    [InlineData(50, false)]
    [InlineData(51, true)]
    public void Refuses_a_carrier_that_is_not_faster_than_the_bursts(double hertz, bool good) =>
        Assert.Equal(good, StimDose.Of(Burst with { Carrier = Frequency.FromHertz(hertz) }).Problems.IsEmpty);

    // At 50 pps a period lasts 20 000 us: two phases of 10 000 us fill it, by definition.
    [Theory]
    [InlineData(WidthBasis.Phase, 10000, true)]
    [InlineData(WidthBasis.Phase, 10001, false)]
    [InlineData(WidthBasis.Pulse, 20000, true)]
    public void Refuses_pulses_that_overlap(WidthBasis basis, double width, bool good) =>
        Assert.Equal(good, StimDose.Of(Strong with { WidthIs = basis, Width = PulseWidth.FromMicroseconds(width) }).Problems.IsEmpty);

    [Theory] // Both phases of an asymmetric pulse must fit the 20 000 us of a period at 50 pps.
    [InlineData(19750, true)]
    [InlineData(19751, false)]
    public void Refuses_asymmetric_pulses_that_overlap(double second, bool good) => Assert.Equal(
        good, StimDose.Of(Strong with { Waveform = Waveform.Asymmetric, SecondWidth = PulseWidth.FromMicroseconds(second) }).Problems.IsEmpty);

    [Fact]
    public void Refuses_a_second_phase_as_long_as_the_whole_pulse()
    {
        StimSettings settings = Strong with { Waveform = Waveform.Asymmetric, WidthIs = WidthBasis.Pulse, SecondWidth = PulseWidth.FromMicroseconds(250) };

        Assert.Equal("second-width", Assert.Single(StimDose.Of(settings).Problems).Field);
        Assert.NotNull(StimDose.Of(settings with { SecondWidth = PulseWidth.FromMicroseconds(249) }).Value);
    }

    [Theory]
    [InlineData(854, false)] // 15 contractions with 14 rests take 855 s.
    [InlineData(855, true)]
    [InlineData(900, true)]
    [InlineData(961, false)] // A sixteenth cycle would begin and end.
    public void Refuses_a_session_length_that_contradicts_the_contractions(double seconds, bool good) =>
        Assert.Equal(good, StimDose.Of(Strong with { SessionLength = Duration.FromSeconds(seconds) }).Problems.IsEmpty);

    [Fact]
    public void Lists_every_problem_in_the_order_of_the_form()
    {
        StimSettings settings = Burst with { On = Duration.FromSeconds(0), Contractions = 0, BurstDuty = Percentage.FromPercent(101) };

        Assert.Equal(["on", "contractions", "burst-duty"], StimDose.Of(settings).Problems.Select(problem => problem.Field));
    }
}
