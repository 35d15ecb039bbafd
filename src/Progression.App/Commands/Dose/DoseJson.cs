using System.Globalization;
using System.Text.Json.Nodes;
using Progression.Core.Stimulation;

namespace Progression.App.Commands.Dose;

/// <summary>The figures of a stim dose as JSON. The keys are permanent; see <see cref="DoseHelp"/>.</summary>
internal static class DoseJson
{
    internal static JsonObject Of(StimFigures figures)
    {
        JsonObject answer = [];
        foreach (StimFigure figure in figures.All)
        {
            answer[figure.Kind.Key] = figure.Value is { } value ? JsonValue.Create(Rounded(value)) : null;
        }

        answer["cautions"] = new JsonArray([.. figures.Cautions.Select(Caution)]);
        answer["not_computed"] = Texts(figures, figure => figure.WhyNot is { } why ? JsonValue.Create(why) : null);
        answer["how"] = Texts(figures, figure => figure.How is { } how ? JsonValue.Create(how) : null);
        answer["rests_on"] = Texts(figures, figure =>
            figure.RestsOn.IsEmpty ? null : new JsonArray([.. figure.RestsOn.Select(reading => JsonValue.Create(reading))]));
        return answer;
    }

    private static JsonObject Texts(StimFigures figures, Func<StimFigure, JsonNode?> text)
    {
        JsonObject texts = [];
        foreach (StimFigure figure in figures.All)
        {
            if (text(figure) is { } found)
            {
                texts[figure.Kind.Key] = found;
            }
        }

        return texts;
    }

    private static JsonObject Caution(StimCaution caution) => new()
    {
        ["id"] = caution.Limit.Id,
        ["severity"] = caution.Severity.ToString().ToLowerInvariant(),
        ["text"] = caution.Text,
        ["limit"] = caution.Limit.Value,
        ["unit"] = caution.Limit.Unit,
        ["value"] = Rounded(caution.Value),
        ["source"] = caution.Limit.Source.Text,
        ["standing"] = caution.Limit.Source.StandingWords,
    };

    /// <summary>Twelve significant digits: enough for any reading, and no noise of binary fractions.</summary>
    private static double Rounded(double value) => double.Parse(value.ToString("G12", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
