using Progression.Core.Library;
using Progression.Core.Quantities;
using Progression.Core.Stimulation;

namespace Progression.Core.Tests.Stimulation;

/// <summary>Settings taken at random from the ends of what can be typed.</summary>
public sealed partial class StimDoseTests
{
    [Fact]
    public void Every_accepted_dose_gives_finite_figures_or_reasons_and_every_other_one_problems()
    {
        Random random = new(6);
        int accepted = 0;
        for (int round = 0; round < 5_000; round++)
        {
            StimSettings settings = Anything(random);
            if (StimDose.Of(settings).Value is not { } dose)
            {
                continue;
            }

            accepted++;
            Assert.All(dose.Compute(StimCases.Limits).All, figure =>
            {
                Assert.True(figure.Value is null ? figure.WhyNot?.Length > 0 : double.IsFinite(figure.Value.Value) && figure.Value >= 0, $"{figure}");
                Assert.Equal(figure.Value is null, figure.How is null);
            });
        }

        Assert.InRange(accepted, 100, 4_900);
    }

    private static StimSettings Anything(Random random) => new()
    {
        On = Some(random, Duration.FromSeconds, 0, 0.001, 5, 3600),
        Off = Some(random, Duration.FromSeconds, 0, 0.001, 45, 3600),
        RampUp = Some(random, Duration.FromSeconds, 0, 0.001, 3, 60),
        RampDown = Some(random, Duration.FromSeconds, 0, 2, 60),
        Ramps = Any<RampPlacement>(random),
        Contractions = Some(random, 1, 15, 1000),
        SessionLength = random.Next(4) > 0 ? null : Some(random, Duration.FromSeconds, 0.001, 900, 86_400),
        CountLastRest = Some(random, true, false),
        SessionsPerDay = Some(random, 1, 24),
        DaysPerWeek = Some(random, 1, 7),
        Weeks = Some(random, 1, 52),
        Rate = Some(random, Frequency.FromHertz, 1e-12, 50, 1000),
        Width = Some(random, PulseWidth.FromMicroseconds, 1e-12, 250, 20_000),
        WidthIs = Any<WidthBasis>(random),
        SecondWidth = Some(random, PulseWidth.FromMicroseconds, 1e-12, 1000, 20_000),
        Waveform = Any<Waveform>(random),
        Carrier = Some(random, Frequency.FromHertz, 1e-12, 2500, 100_000),
        BurstDuty = Some(random, Percentage.FromPercent, 1e-12, 50, 100),
        Peak = Some(random, Current.FromMilliamperes, 0, 60, 1000),
        Pad = Some(random, side => StimCases.Pad(side, side), 0.1, 5, 50),
        Evoked = Some(random, Torque.FromNewtonMetres, 0, 24, 1000),
        MaximalVoluntary = Some(random, Torque.FromNewtonMetres, 1e-12, 80, 1000),
    };

    private static T? Some<T>(Random random, Func<double, T> make, params ReadOnlySpan<double> values)
        where T : class => random.Next(8) == 0 ? null : make(values[random.Next(values.Length)]);

    private static T? Some<T>(Random random, params ReadOnlySpan<T> values)
        where T : struct => random.Next(8) == 0 ? null : values[random.Next(values.Length)];

    private static T? Any<T>(Random random)
        where T : struct, Enum => Some(random, Enum.GetValues<T>());
}
