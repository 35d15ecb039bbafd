using System.Collections.Immutable;
using Progression.Core.Entry;
using Progression.Core.Library;

namespace Progression.Core.Stimulation;

/// <summary>Stim settings that can be true together. From it come all figures, each with the way it was got.</summary>
public sealed record StimDose
{
    private StimDose(StimSettings settings) => Settings = settings;

    /// <summary>The settings.</summary>
    public StimSettings Settings { get; }

    /// <summary>
    /// Checks that the settings can be true together. The problems name their field as the command line does, without the dashes: "ramp-up".
    /// </summary>
    public static Entered<StimDose> Of(StimSettings settings)
    {
        ImmutableArray<Problem> problems = SettingsCheck.Problems(settings);
        return problems.IsEmpty ? Entered<StimDose>.Good(new StimDose(settings)) : Entered<StimDose>.Bad(problems);
    }

    /// <summary>Reckons every figure and compares those that have a published limit.</summary>
    /// <param name="limits">The thresholds by id; every stim threshold of <see cref="LimitIds"/> must be there.</param>
    /// <exception cref="KeyNotFoundException">A threshold is missing.</exception>
    public StimFigures Compute(IReadOnlyDictionary<string, Limit> limits)
    {
        Ledger ledger = new();
        TimeReckoning time = new(Settings, ledger);
        new CurrentReckoning(Settings, time, limits, ledger).Reckon();
        StimFigures figures = new(ledger.InOrder(), []);
        return new StimFigures(figures.All, CautionCheck.Of(Settings, figures, limits));
    }
}
