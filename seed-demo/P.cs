namespace Progression.SeedDemo;

/// <summary>Nothing yet.</summary>
public static class Placeholder;
