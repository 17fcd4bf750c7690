console.log('hi', process.argv.slice(2));
