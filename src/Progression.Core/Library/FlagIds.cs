using System.Collections.Immutable;

namespace Progression.Core.Library;

/// <summary>The red flags that the rules know by name. A library without one of them is refused; a clinic may add its own.</summary>
public static class FlagIds
{
    /// <summary>Signs that may mean a clot in the leg.</summary>
    public const string ClotLeg = "clot-leg";
    /// <summary>Signs that may mean a clot in the lung.</summary>
    public const string ClotLung = "clot-lung";
    /// <summary>Signs that may mean an infection.</summary>
    public const string Infection = "infection";
    /// <summary>A pop, a fall or a gap: the extensor mechanism may be torn.</summary>
    public const string Extensor = "extensor-torn";
    /// <summary>The lag is up at once with full passive extension; computed.</summary>
    public const string LagRise = "lag-rise";
    /// <summary>A straight-leg raise that was there is gone; computed.</summary>
    public const string RaiseLost = "raise-lost";
    /// <summary>The knee does not bend or straighten by its week; computed. It does not bar stim.</summary>
    public const string Stiff = "stiff-knee";
    /// <summary>Any other urgent sign.</summary>
    public const string Other = "urgent-other";

    /// <summary>Those that refer at once, in the order of reading: all but the stiff knee.</summary>
    public static ImmutableArray<string> AtOnce { get; } = [LagRise, RaiseLost, Extensor, ClotLeg, ClotLung, Infection, Other];

    /// <summary>Those that readings raise.</summary>
    public static ImmutableArray<string> Computed { get; } = [LagRise, RaiseLost, Stiff];

    /// <summary>Every flag that must be present.</summary>
    public static ImmutableArray<string> Needed { get; } = [.. AtOnce, Stiff];
}
