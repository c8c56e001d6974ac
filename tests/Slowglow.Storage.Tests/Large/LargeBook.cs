using Microsoft.EntityFrameworkCore;

namespace Slowglow.Storage.Tests.Large;

/// <summary>A book of 100,000 jobs and 2,000,000 entries, generated in the database itself; 400 jobs are open, 100 of them wait to be collected.</summary>
internal static class LargeBook
{
    public const int Jobs = 100_000;
    public const int EntriesAJob = 20;

    private static readonly string[] Statements =
    [
        $$"""
            INSERT INTO customers ("Name", "Contact", "Mail", "Address")
            WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < 40000)
            SELECT 'Customer ' || i || ' of Street ' || (i * 7919 % 9973), '0' || (CAST(i AS BIGINT) * 15485863 % 99999989), '', '' FROM n
            """,
        $$"""
            INSERT INTO jobs ("Number", "CustomerId", "BookedIn", mains_volts, maker, model, serial)
            WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < {{Jobs}})
            SELECT i, 1 + i % 40000, 1500000000000 + CAST(i AS BIGINT) * 3000000, 230, 'Maker ' || (i % 97), 'Model ' || (i % 1009), 'S' || (i * 31) FROM n
            """,
        $$"""
            INSERT INTO timeline ("JobNumber", "Sequence", "At", kind, text)
            WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < {{EntriesAJob}})
            SELECT j."Number", n.i, j."BookedIn" + n.i * 60000,
              CASE WHEN n.i = 1 THEN 'booked in' ELSE 'note written' END,
              CASE WHEN n.i = 1 THEN 'hums on channel ' || (j."Number" % 7) || ' since the move ' || (j."Number" * 13 % 7001) ELSE 'found nothing in stage ' || n.i END
            FROM jobs j CROSS JOIN n
            """,
        $$"""
            INSERT INTO board ("JobNumber", "CustomerId", "Customer", "Unit", "Complaint", "State", "WaitsFor", "Since", "BookedIn", "Promised", "UnitKey", "ModelKey", "Words", "Readings", "LastSequence")
            SELECT j."Number", j."CustomerId", c."Name", j.maker || ' ' || j.model, t.text,
              CASE WHEN j."Number" > {{Jobs - 400}} THEN 'OnTheBench' ELSE 'HandedOver' END,
              CASE WHEN j."Number" > {{Jobs - 100}} THEN 'Collection' WHEN j."Number" > {{Jobs
                - 400}} THEN 'Us' ELSE 'Nothing' END,
              j."BookedIn", j."BookedIn", j."BookedIn" + 1000000000, 'maker' || j."Number", lower(replace(j.maker || j.model, ' ', '')),
              lower(j."Number" || ' ' || c."Name" || ' ' || c."Contact" || ' ' || j.maker || ' ' || j.model || ' ' || j.serial || ' ' || t.text), 0, {{EntriesAJob}}
            FROM jobs j JOIN customers c ON c."Id" = j."CustomerId" JOIN timeline t ON t."JobNumber" = j."Number" AND t."Sequence" = 1
            """,
    ];

    public static async Task FillAsync(ShopDatabase database, CancellationToken cancel)
    {
        database.Database.SetCommandTimeout(600);
        foreach (var statement in Statements)
        {
            await database.Database.ExecuteSqlRawAsync(statement, cancel);
        }

        await database.Database.ExecuteSqlRawAsync("ANALYZE", cancel);
    }
}
