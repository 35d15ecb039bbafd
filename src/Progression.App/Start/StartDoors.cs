using Progression.App.Actions;

namespace Progression.App.Start;

/// <summary>Show the settings of the person who works.</summary>
public sealed record ShowSettings : ScreenEffect;

/// <summary>Show the reviews that wait.</summary>
public sealed record ShowReviews : ScreenEffect;

/// <summary>Show the clinical library.</summary>
public sealed record BrowseLibrary : ScreenEffect;

/// <summary>Show the figures of the clinic.</summary>
public sealed record ShowFigures : ScreenEffect;
