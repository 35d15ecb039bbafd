using System.Globalization;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;
using Progression.Exchange.Import;

namespace Progression.Exchange.Fhir;

/// <summary>Reads what stands with a value: its trials, the position, the steps of a staircase, who measured, with what.</summary>
internal static class ReadingDetails
{
    private const int MostText = 120;

    // A mean of trials that were converted and rounded may be off by their rounding.
    private const double Rounding = 2e-6;

    /// <summary>The reading with them, or what is wrong with one of them.</summary>
    public static (Reading? Reading, ImportProblem? Problem) Of(IncomingEntry entry, Measure measure, Reading value, DeficitSign sign)
    {
        Reading reading = value;
        int number = 0;
        foreach (FhirPart component in entry.Resource.Parts("component"))
        {
            string path = string.Create(CultureInfo.InvariantCulture, $"component[{number++}]");
            (Reading? so, ImportProblem? problem) = With(entry, (component, path), (measure, sign), reading);
            if (so is null)
            {
                return (null, problem);
            }

            reading = so;
        }

        return Mean(entry, reading) is { } wrong ? (null, wrong) : Named(entry, reading);
    }

    private static (Reading? Reading, ImportProblem? Problem) With(IncomingEntry entry, (FhirPart Part, string Path) component, (Measure Measure, DeficitSign Sign) of, Reading reading)
    {
        FhirPart part = component.Part;
        switch (part.Codings("code").FirstOrDefault(one => one.System == FhirSystems.Detail).Code)
        {
            case FhirSystems.Trial:
                (double trial, ImportProblem? problem) = IncomingValue.Of(entry, part, of.Measure, component.Path + ".");
                problem ??= trial < of.Measure.Least || trial > of.Measure.Most
                    ? new ImportProblem(entry.At(component.Path), "The trial is out of range.", MeasureText.Form(of.Measure).Allowed, part.Part("valueQuantity")?.Raw("value") ?? "")
                    : null;
                return problem is null
                    ? (reading with { Each = reading.Each.Add(WrittenDeficit.Turn(of.Sign, of.Measure.Id, trial)), Trials = reading.Each.Length + 1 }, null)
                    : (null, problem);
            case FhirSystems.Trials:
                return (reading with { Trials = part.Whole("valueInteger") ?? 0 }, null);
            case FhirSystems.Steps:
                return (reading with { Steps = part.Whole("valueInteger") ?? 0 }, null);
            case FhirSystems.Position:
                return (reading with { Position = part.Text("valueString") }, null);
            default:
                return (null, new ImportProblem(entry.At(component.Path + ".code"), "A part of this observation is not known here.", "trial, trials, position or steps of this program", part.Raw("code")));
        }
    }

    private static ImportProblem? Mean(IncomingEntry entry, Reading reading)
    {
        if (reading.Each.IsEmpty)
        {
            return null;
        }

        double mean = reading.Each.Average();
        return Math.Abs(mean - reading.Value) <= Rounding ? null : new ImportProblem(
            entry.At("component"), "The value is not the mean of its trials.", Shown(mean), Shown(reading.Value));
    }

    private static (Reading? Reading, ImportProblem? Problem) Named(IncomingEntry entry, Reading reading)
    {
        string? rater = entry.Resource.Parts("performer").Select(one => one.Text("display")).OfType<string>().FirstOrDefault();
        string? device = entry.Resource.Part("device")?.Text("display");
        foreach ((string field, string? text) in new[] { ("performer", rater), ("device", device), ("component", reading.Position) })
        {
            if (text?.Length > MostText)
            {
                return (null, new ImportProblem(entry.At(field), "The text is too long.", $"up to {MostText} characters", text));
            }
        }

        return (reading with { Rater = Words(rater), Device = Words(device), Position = Words(reading.Position) }, null);
    }

    private static string Shown(double value) => value.ToString("0.######", CultureInfo.InvariantCulture);

    private static string? Words(string? text) => FhirNode.Words(text)?.GetValue<string>();
}
