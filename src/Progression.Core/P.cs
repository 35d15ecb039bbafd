namespace Progression.Core;

/// <summary>Nothing yet.</summary>
public static class Placeholder;
