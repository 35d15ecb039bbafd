using Progression.Core.People;
using Progression.Records.Storage;

namespace Progression.App.Stores;

/// <summary>What the workbook is asked to open.</summary>
/// <param name="Store">The store.</param>
/// <param name="Demo">Gives the demo's store, filled or not, when the person asks for it.</param>
public sealed record WorkbookOrder(OpenStore Store, Func<OpenStore> Demo)
{
    /// <summary>The case whose plan is opened first; null for the list of cases.</summary>
    public CaseCode? Code { get; init; }

    /// <summary>The settings of the person who works; null where none are kept.</summary>
    public SettingsKeeper? Settings { get; init; }

    /// <summary>Called when a screen is about to be shown: from then on it hears how far a long work is, and nothing else may write to the terminal.</summary>
    public Action<IProgress<WorkDone>> Shown { get; init; } = static _ => { };

    /// <summary>Whether the workbook ends when that plan is left, without its list of cases.</summary>
    public bool OnlyThat { get; init; }
}
