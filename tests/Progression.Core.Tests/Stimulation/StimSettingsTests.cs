using Progression.Core.Library;
using Progression.Core.Quantities;
using Progression.Core.Stimulation;

namespace Progression.Core.Tests.Stimulation;

public sealed class StimSettingsTests
{
    [Fact]
    public void What_a_paper_leaves_open_stays_missing()
    {
        StimSettings settings = StimSettings.From(Paper);

        Assert.Equal((15, 45), (settings.On?.Seconds, settings.Off?.Seconds));
        Assert.Equal(15, settings.Contractions);
        Assert.Equal(Waveform.Symmetric, settings.Waveform);
        Assert.Equal(new StimSettings
        {
            On = Duration.FromSeconds(15),
            Off = Duration.FromSeconds(45),
            Contractions = 15,
            SessionsPerDay = 2,
            DaysPerWeek = 7,
            Weeks = 6,
            Waveform = Waveform.Symmetric,
        }, settings);
    }

    private static Regimen Paper => new()
    {
        Id = "made-up",
        Title = "",
        Population = "",
        Contractions = Stated<int>.As(15, Standing.Seen),
        SessionLength = Stated<Duration>.Open,
        On = Stated<Duration>.As(Duration.FromSeconds(15), Standing.Seen),
        Off = Stated<Duration>.As(Duration.FromSeconds(45), Standing.Seen),
        RampUp = Stated<Duration>.Open,
        RampDown = Stated<Duration>.Open,
        Ramps = Stated<RampPlacement>.Open,
        Rate = Stated<Frequency>.Open,
        Width = Stated<PulseWidth>.Open,
        WidthIs = Stated<WidthBasis>.Open,
        Waveform = Stated<Waveform>.As(Waveform.Symmetric, Standing.FromMemory),
        Carrier = Stated<Frequency>.Open,
        BurstDuty = Stated<Percentage>.Open,
        Pad = Stated<PadSize>.Open,
        Position = Stated<string>.Open,
        Isometric = Stated<bool>.Open,
        Intensity = Stated<string>.Open,
        SessionsPerDay = Stated<int>.As(2, Standing.Seen),
        DaysPerWeek = Stated<int>.As(7, Standing.FromMemory),
        Weeks = Stated<int>.As(6, Standing.Seen),
        ActiveWork = Stated<string>.Open,
        Outcome = "",
        Source = new Source("made up", Standing.CommonPractice),
    };
}
