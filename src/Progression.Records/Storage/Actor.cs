namespace Progression.Records.Storage;

/// <summary>Who saves.</summary>
/// <param name="UserId">The account, as the system knows it; two saves by the same account are by the same person.</param>
/// <param name="Name">The name shown beside a revision.</param>
public sealed record Actor(string UserId, string Name);
