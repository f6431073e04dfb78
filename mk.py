import os
cp=[p for p in os.environ['CP'].split(':') if p.endswith('.jar') and not any(w in p for w in ('poi','xmlbeans','log4j','junit','jqwik','networknt','databind'))]
line='Class-Path: '+' '.join('file://'+p for p in ['/tmp/wb/core/']+cp)
out=line[:70]; rest=line[70:]
while rest: out+='\n '+rest[:69]; rest=rest[69:]
open('/tmp/wb/jar/m.txt','w').write('Main-Class: dev.placket.demo.Main\n'+out+'\n')
