using System.Text;
using Progression.Core.Findings;
using Progression.Core.Stimulation;

namespace Progression.App.Commands.Dose;

/// <summary>The figures of a stim dose as a table for people, each with the way it was got.</summary>
internal static class DoseText
{
    internal static string Of(StimFigures figures)
    {
        StimFigure[] known = [.. figures.All.Where(figure => figure.Value is not null)];
        StringBuilder text = new();
        if (known.Length > 0)
        {
            int titles = known.Max(figure => figure.Kind.Title.Length);
            int values = known.Max(figure => figure.Shown!.Length);
            Section(text, "Figures", known.Select(figure => $"{figure.Kind.Title.PadRight(titles)}  {figure.Shown!.PadLeft(values)}  = {figure.How}"));
        }

        Section(text, "These rest on", known.SelectMany(figure => figure.RestsOn).Distinct());
        Section(text, "Not computed", figures.All.Where(figure => figure.Value is null).Select(figure => $"{figure.Kind.Title}: {figure.WhyNot}"));
        Section(text, "Cautions", figures.Cautions.SelectMany(Lines));
        text.Append("It suggests; a clinician decides. The surgeon's and local protocols and the device's own instructions come first.");
        return text.ToString();
    }

    private static IEnumerable<string> Lines(StimCaution caution) =>
    [
        $"{Word(caution.Severity)}: {caution.Text}",
        $"  {caution.Limit.Id}: {caution.Limit.Source}",
    ];

    private static string Word(Severity severity) => severity == Severity.Note ? "note" : "warning";

    private static void Section(StringBuilder text, string title, IEnumerable<string> lines)
    {
        string[] all = [.. lines];
        if (all.Length == 0)
        {
            return;
        }

        text.Append(title).Append('\n');
        foreach (string line in all)
        {
            text.Append("  ").Append(line).Append('\n');
        }

        text.Append('\n');
    }
}
