using System.CommandLine;
using Progression.Core.Entry;
using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.Stimulation;

namespace Progression.App.Commands.Dose;

/// <summary><c>progression dose</c>: the arithmetic of stim settings, each figure with the way it was got.</summary>
/// <param name="output">Where the answer goes.</param>
/// <param name="libraries">Gives the library with its limits and regimens.</param>
internal sealed class DoseCommand(CommandOutput output, LibraryPlace libraries)
{
    private readonly DoseOptions _options = new();
    private readonly Option<bool> _json = new("--json") { Description = "Print the figures as JSON." };

    internal Command Build()
    {
        ExampledCommand command = new("dose", "Reckons a stim dose from its settings. Every setting may be left out.", DoseHelp.Text);
        foreach (Option option in _options.All)
        {
            command.Options.Add(option);
        }

        command.Options.Add(_json);
        command.Options.Add(libraries.Option);
        command.SetAction(Run);
        return command;
    }

    private int Run(ParseResult line)
    {
        (ClinicalLibrary? clinical, int code) = libraries.Read("dose", line);
        if (clinical is null)
        {
            return code;
        }

        Entered<StimDose> dose = _options.Read(line, clinical);
        if (dose.Value is null)
        {
            output.Problems("dose", dose.Problems);
            return ExitCode.Usage;
        }

        if (_options.Start(line, clinical) is { } regimen)
        {
            output.Message($"From {regimen.Id}: {regimen.Source}. \"progression library show {regimen.Id}\" tells the standing of each field.");
        }

        StimFigures figures = dose.Value.Compute(clinical.Limits);
        if (line.GetValue(_json))
        {
            output.Json(DoseJson.Of(figures));
        }
        else
        {
            output.Data(DoseText.Of(figures));
        }

        return figures.Cautions.Any(caution => caution.Severity == Severity.Warning) ? ExitCode.Warning : ExitCode.Good;
    }
}
