namespace Progression.Records;

/// <summary>Nothing yet.</summary>
public static class Placeholder;
