using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;
using Progression.Records.Yaml;

namespace Progression.Records.Cases;

/// <summary>
/// Reads the readings of one assessment. A reading is a value with its unit, or a map of the value or of each trial with who measured, with what, in which
/// position, and what stood there before.
/// </summary>
internal static class ReadingFields
{
    /// <summary>No readings.</summary>
    public static ImmutableSortedDictionary<string, Reading> None { get; } = ImmutableSortedDictionary.Create<string, Reading>(StringComparer.Ordinal);

    private static readonly NumberRange Trials = new(1, Reading.MostTrials, "1");
    private static readonly NumberRange Steps = new(1, Reading.MostSteps, "steps");

    /// <summary>The readings by measure id.</summary>
    public static ImmutableSortedDictionary<string, Reading> Read(Fields fields, CaseReading reading)
    {
        ClinicalLibrary library = reading.Library;
        var readings = None.ToBuilder();
        foreach (string id in fields.Keys().Select(key => key.Text))
        {
            if (MayBeEntered(fields, id, library) && One(fields, library.Measures[id], reading) is Reading read)
            {
                readings[id] = read;
            }
        }

        bool force = fields.Has(MeasureIds.QuadricepsForce) || fields.Has(MeasureIds.OtherForce);
        if (force && !fields.Has(MeasureIds.LeverArm))
        {
            string range = MeasureText.Form(library.Measures[MeasureIds.LeverArm]).Allowed;
            fields.Refuse(MeasureIds.LeverArm, "A force says nothing without the lever arm at which it was measured.", range, "");
        }

        return readings.ToImmutable();
    }

    /// <summary>A value under a key as it is written where the person is treated, turned flexion-positive; null with a problem when it is none.</summary>
    public static Reading? Value(Fields fields, string key, Measure measure, DeficitSign sign)
    {
        Measure written = WrittenDeficit.Range(sign, measure);
        return Turned(fields.As(key, Need.Optional, (field, text) => MeasureText.Read(written, field, text)), sign);
    }

    private static bool MayBeEntered(Fields fields, string id, ClinicalLibrary library)
    {
        if (MeasureIds.Computed.Contains(id))
        {
            fields.Refuse(id, "This is computed from other readings and not entered.", "the readings it is computed from", id);
            return false;
        }

        if (!library.Measures.ContainsKey(id))
        {
            fields.RefuseId(id, "measure", library.Measures.Keys.Except(MeasureIds.Computed));
            return false;
        }

        return true;
    }

    private static Reading? One(Fields readings, Measure measure, CaseReading reading)
    {
        if (readings.Node(measure.Id, Need.Required) is not YamlMap)
        {
            return Value(readings, measure.Id, measure, reading.Deficits);
        }

        Fields fields = readings.Map(measure.Id, Need.Required)!;
        Reading? read = Valued(fields, measure, reading.Deficits);
        string? rater = fields.Text("rater", Need.Optional);
        string? device = fields.Text("device", Need.Optional);
        string? position = fields.Text("position", Need.Optional);
        int? steps = fields.Whole("steps", Need.Optional, Steps);
        ImmutableArray<Correction> corrected = [.. fields.Maps("corrected", Need.Optional).Select(one => Corrected(one, measure, reading)).OfType<Correction>()];
        fields.Done();
        return read is null ? null : read with { Rater = rater, Device = device, Position = position, Steps = steps, Corrected = corrected };
    }

    /// <summary>The value: one, with the number of trials it is the mean of, or the mean of the trials given one by one.</summary>
    private static Reading? Valued(Fields fields, Measure measure, DeficitSign sign)
    {
        Reading? value = Value(fields, "value", measure, sign);
        int? trials = fields.Whole("trials", Need.Optional, Trials);
        Measure written = WrittenDeficit.Range(sign, measure);
        ImmutableArray<double> each =
            [.. fields.Values("each", (field, text) => MeasureText.Read(written, field, text)).Select(one => Turned(one, sign)!.Value)];
        if (!fields.Has("each"))
        {
            fields.Node("value", Need.Required);
            return value is null ? null : value with { Trials = trials };
        }

        if (fields.Node("each", Need.Optional) is not YamlList { Items: var items } || each.Length < items.Length)
        {
            return null;
        }

        if (items.IsEmpty)
        {
            fields.Refuse("each", "There is no trial.", $"1 to {Trials.Most} values", "");
            return null;
        }

        Reading mean = Reading.OfTrials(measure.Id, each);
        Judge(fields, measure, mean, (value, trials));
        return mean;
    }

    private static void Judge(Fields fields, Measure measure, Reading mean, (Reading? Value, int? Trials) given)
    {
        if (measure.Scale == ErrorScale.Ordinal && mean.Each.Length > 1)
        {
            fields.Refuse("each", "Steps of a scale have no mean.", "one value", $"{mean.Each.Length} values");
        }

        if (mean.Each.Length > Trials.Most)
        {
            fields.Refuse("each", "There are too many trials.", $"1 to {Trials.Most} values", $"{mean.Each.Length} values");
        }

        if (given.Trials is int trials && trials != mean.Trials)
        {
            fields.Refuse("trials", "The number of trials is not the number of values under each.", $"{mean.Trials}, or left out", $"{trials}");
        }

        // A mean may have been rounded before it was written down.
        if (given.Value is { } value && !Enumerable.Range(0, 7).Any(decimals => Math.Round(mean.Value, decimals, MidpointRounding.AwayFromZero) == value.Value))
        {
            string right = MeasureText.Write(measure, Math.Round(mean.Value, 2));
            fields.Refuse("value", "The value is not the mean of the trials under each.", $"{right}, or left out", MeasureText.Write(measure, value.Value));
        }
    }

    private static Correction? Corrected(Fields fields, Measure measure, CaseReading reading)
    {
        fields.Node("was", Need.Required);
        Reading? was = Value(fields, "was", measure, reading.Deficits);
        DateOnly? on = fields.Date("on", Need.Required, reading.UpToToday);
        string? by = fields.Text("by", Need.Required);
        string? why = fields.Text("why", Need.Optional, 300);
        fields.Done();
        return was is not null && on is DateOnly day && by is not null ? new Correction(was.Value, day, by, why) : null;
    }

    private static Reading? Turned(Reading? reading, DeficitSign sign) =>
        reading is null ? null : reading with { Value = WrittenDeficit.Turn(sign, reading.Measure, reading.Value) };
}
