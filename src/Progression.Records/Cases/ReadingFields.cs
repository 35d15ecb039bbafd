using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;
using Progression.Records.Yaml;

namespace Progression.Records.Cases;

/// <summary>Reads the readings of one assessment. A reading is a value with its unit, or a map of the value with trials, device and position.</summary>
internal static class ReadingFields
{
    /// <summary>No readings.</summary>
    public static ImmutableSortedDictionary<string, Reading> None { get; } = ImmutableSortedDictionary.Create<string, Reading>(StringComparer.Ordinal);

    /// <summary>The readings by measure id.</summary>
    public static ImmutableSortedDictionary<string, Reading> Read(Fields fields, ClinicalLibrary library)
    {
        var readings = None.ToBuilder();
        foreach (string id in fields.Keys().Select(key => key.Text))
        {
            if (MayBeEntered(fields, id, library) && One(fields, library.Measures[id]) is Reading reading)
            {
                readings[id] = reading;
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

    private static Reading? One(Fields readings, Measure measure)
    {
        if (readings.Node(measure.Id, Need.Required) is not YamlMap)
        {
            return readings.As(measure.Id, Need.Optional, (field, text) => MeasureText.Read(measure, field, text));
        }

        Fields fields = readings.Map(measure.Id, Need.Required)!;
        Reading? reading = fields.As("value", Need.Required, (field, text) => MeasureText.Read(measure, field, text));
        int? trials = fields.Whole("trials", Need.Optional, new NumberRange(1, 20, "1"));
        string? device = fields.Text("device", Need.Optional);
        string? position = fields.Text("position", Need.Optional);
        fields.Done();
        return reading is null ? null : reading with { Trials = trials, Device = device, Position = position };
    }
}
