namespace Progression.Core.People;

/// <summary>A clinician's note that closes a red flag.</summary>
/// <param name="Flag">The id of the flag.</param>
/// <param name="On">The day; the flag is closed for what was seen up to and on this day, and opens again when a later visit shows it again.</param>
/// <param name="By">Who closed it: a name, role or initials.</param>
/// <param name="Text">What was found and done.</param>
public sealed record FlagNote(string Flag, DateOnly On, string By, string Text);
