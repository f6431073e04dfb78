// The tests ran.
def log = new File(basedir, 'build.log').text
if (!log.contains('Tests run: 1, Failures: 0, Errors: 0, Skipped: 0')) {
  throw new IllegalStateException('the consumer of packs did not make its PDF, see build.log')
}
