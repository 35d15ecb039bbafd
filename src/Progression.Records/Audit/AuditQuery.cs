namespace Progression.Records.Audit;

/// <summary>Which of the things that were done are asked for. What is null asks for all.</summary>
public sealed record AuditQuery
{
    /// <summary>With this case.</summary>
    public string? CaseCode { get; init; }

    /// <summary>By this person: the account's name as it was then, in any case of letters, or its number.</summary>
    public string? Person { get; init; }

    /// <summary>This, in a word of <see cref="AuditEvent.Acts"/>.</summary>
    public string? Act { get; init; }

    /// <summary>At this moment or later.</summary>
    public DateTimeOffset? From { get; init; }

    /// <summary>Before this moment.</summary>
    public DateTimeOffset? Before { get; init; }

    /// <summary>Whether something is asked for.</summary>
    public bool Takes(AuditEvent done)
    {
        ArgumentNullException.ThrowIfNull(done);
        return (CaseCode is null || done.CaseCode == CaseCode)
            && (Person is null || done.By.UserId == Person || string.Equals(done.By.Name, Person, StringComparison.OrdinalIgnoreCase))
            && (Act is null || done.Act == Act)
            && (From is null || done.At >= From)
            && (Before is null || done.At < Before);
    }
}
