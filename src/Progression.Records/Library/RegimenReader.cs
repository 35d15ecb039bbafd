using System.Collections.Immutable;
using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Core.Quantities;
using Progression.Records.Yaml;

namespace Progression.Records.Library;

/// <summary>Reads regimens.yaml.</summary>
internal static class RegimenReader
{
    /// <summary>The field at the top of the file that names the usual regimen.</summary>
    public const string Default = "default";

    private const int LongestText = 200;

    public static (ImmutableSortedDictionary<string, Regimen> Regimens, string? Usual) Read(LibraryEntries entries)
    {
        ImmutableSortedDictionary<string, Regimen> regimens = entries.All.Select(One).OfType<Regimen>()
            .ToImmutableSortedDictionary(regimen => regimen.Id, regimen => regimen, StringComparer.Ordinal);
        return (regimens, Usual(entries, regimens));
    }

    private static string? Usual(LibraryEntries entries, ImmutableSortedDictionary<string, Regimen> regimens)
    {
        if (entries.TopWith(Default) is not Fields top)
        {
            entries.Refuse(new Problem(Default, "No usual regimen is named.", "the id of a regimen", ""));
            return null;
        }

        if (top.Text(Default, Need.Required) is string named && entries.Removes(named))
        {
            entries.Require([named]);
            return null;
        }

        string? id = top.OneOf(Default, Need.Required, entries.All.Select(entry => entry.Id));
        if (id is not null && regimens.TryGetValue(id, out Regimen? usual) && !CanBePlanned(usual))
        {
            top.Refuse(Default, "The usual regimen leaves open what a plan needs.", "contractions or session_length, sessions_a_day and days_a_week", id);
        }

        return id;
    }

    private static bool CanBePlanned(Regimen regimen) =>
        !(regimen.Contractions.IsOpen && regimen.SessionLength.IsOpen) && !regimen.SessionsPerDay.IsOpen && !regimen.DaysPerWeek.IsOpen;

    private static Regimen? One(LibraryEntry entry)
    {
        Fields fields = entry.Fields;
        int before = fields.Problems.Count;
        string? title = fields.Text("title", Need.Required);
        string? population = fields.Text("population", Need.Required, LongestText);
        string? outcome = fields.Text("outcome", Need.Required, LongestText);
        Source source = fields.Source();
        Regimen regimen = WithCourse(WithCurrent(new StatedFields(fields, source.Standing)), new StatedFields(fields, source.Standing)) with
        {
            Id = entry.Id,
            Title = title ?? "",
            Population = population ?? "",
            Outcome = outcome ?? "",
            Note = fields.Text("note", Need.Optional, LongestText),
            Source = source,
        };
        fields.Done();
        CheckRamps(fields, regimen);
        return fields.Problems.Count == before ? regimen : null;
    }

    private static Regimen WithCurrent(StatedFields stated) => new()
    {
        Id = "",
        Title = "",
        Population = "",
        Outcome = "",
        Source = new Source("", Standing.CommonPractice),
        On = stated.As("on", QuantityText.Duration.Within(0.1m, 600).Read),
        Off = stated.As("off", QuantityText.Duration.Within(0, 600).Read),
        RampUp = stated.As("ramp_up", QuantityText.Duration.Within(0, 30).Read),
        RampDown = stated.As("ramp_down", QuantityText.Duration.Within(0, 30).Read),
        Ramps = stated.OneOf<RampPlacement>("ramps"),
        Rate = stated.As("rate", QuantityText.PulseRate.Within(1, 1000).Read),
        Width = stated.As("width", QuantityText.PulseWidth.Within(1, 20_000).Read),
        WidthIs = stated.OneOf<WidthBasis>("width_is"),
        Waveform = stated.OneOf<Waveform>("waveform"),
        Carrier = stated.As("carrier", QuantityText.Carrier.Within(100, 100_000).Read),
        BurstDuty = stated.As("burst_duty", QuantityText.Percentage.Within(1, 100).Read),
        Pad = stated.As("pad", PadText.Read),
        Contractions = Stated<int>.Open,
        SessionLength = Stated<Duration>.Open,
        Position = Stated<string>.Open,
        Isometric = Stated<bool>.Open,
        Intensity = Stated<string>.Open,
        SessionsPerDay = Stated<int>.Open,
        DaysPerWeek = Stated<int>.Open,
        Weeks = Stated<int>.Open,
        ActiveWork = Stated<string>.Open,
    };

    private static Regimen WithCourse(Regimen regimen, StatedFields stated) => regimen with
    {
        Contractions = stated.Whole("contractions", 1, 300),
        SessionLength = stated.As("session_length", QuantityText.Duration.Within(60, 8 * 3600).Read),
        Position = stated.Text("position"),
        Isometric = stated.YesNo("isometric"),
        Intensity = stated.Text("intensity"),
        SessionsPerDay = stated.Whole("sessions_a_day", 1, 12),
        DaysPerWeek = stated.Whole("days_a_week", 1, 7),
        Weeks = stated.Whole("weeks", 1, 52),
        ActiveWork = stated.Text("active_work"),
    };

    /// <summary>Ramps inside the on-time cannot be longer than it. Ramps that may lie outside are not judged.</summary>
    private static void CheckRamps(Fields fields, Regimen regimen)
    {
        if (regimen.On.IsOpen || regimen.Ramps.IsOpen || regimen.Ramps.Value != RampPlacement.Inside)
        {
            return;
        }

        double ramps = Seconds(regimen.RampUp) + Seconds(regimen.RampDown);
        if (ramps > regimen.On.Value.Seconds)
        {
            fields.Refuse("on", "The ramps inside it are longer than the on-time.", $"at least {Number.Text(ramps)} s", $"{regimen.On.Value}");
        }
    }

    private static double Seconds(Stated<Duration> ramp) => ramp.IsOpen ? 0 : ramp.Value.Seconds;
}
